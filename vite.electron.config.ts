import { builtinModules } from 'node:module';
import { defineConfig, type EnvironmentOptions } from 'vite';

const fromElectron = ['electron', ...builtinModules, /^node:/];

/** One script for a part of Electron: everything bundled but Electron and Node themselves. */
const script = (entry: string, format: 'es' | 'cjs', fileName: string): EnvironmentOptions => ({
  consumer: 'server',
  resolve: { noExternal: true, external: ['electron'] },
  build: {
    outDir: 'dist/electron',
    emptyOutDir: false,
    copyPublicDir: false,
    target: 'node22',
    sourcemap: true,
    rolldownOptions: {
      input: entry,
      external: fromElectron,
      output: { format, entryFileNames: fileName, codeSplitting: false },
    },
  },
});

/**
 * The main process, a module, and the preload script, which must be CommonJS to run in the sandbox:
 * `vite build --app` makes both.
 */
export default defineConfig({
  environments: {
    main: script('electron/main.ts', 'es', 'main.js'),
    preload: script('electron/preload.ts', 'cjs', 'preload.cjs'),
  },
  builder: {
    buildApp: async (builder) => {
      for (const name of ['main', 'preload']) {
        const environment = builder.environments[name];
        if (environment) await builder.build(environment);
      }
    },
  },
});
