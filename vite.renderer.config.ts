import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The window's page: plain files that any host can serve, under a policy without `unsafe-*`. */
export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [react()],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: ['chrome123', 'firefox128', 'safari17.5'],
    // A file inlined as a data: address is refused by the page's policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    sourcemap: true,
    // Nothing crosses a network: one large script starts sooner than several small ones.
    chunkSizeWarningLimit: 2000,
  },
  worker: { format: 'es' },
});
