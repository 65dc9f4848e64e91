import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('.', import.meta.url));

/**
 * A page that shows each panel in each of its states, for the eye and for the accessibility test.
 * It is no part of the app: `npx vite tests/renderer/gallery -c tests/renderer/gallery/vite.config.ts`.
 */
export default defineConfig({
  root,
  base: './',
  plugins: [react()],
  server: { fs: { allow: [fileURLToPath(new URL('../../..', import.meta.url))] } },
  build: {
    outDir: fileURLToPath(new URL('../../../dist/gallery', import.meta.url)),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
});
