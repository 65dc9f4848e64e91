import { defineConfig } from 'vite';

/** The command line, its workers and the start page of `npm start`, for plain Node. */
export default defineConfig({
  build: {
    ssr: true,
    outDir: 'dist/cli',
    target: 'node20',
    sourcemap: true,
    rolldownOptions: {
      input: {
        afterfire: 'cli/afterfire.ts',
        worker: 'cli/worker.ts',
        start: 'cli/start.ts',
      },
    },
  },
  ssr: { noExternal: true },
});
