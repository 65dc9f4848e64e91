import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { ClosingLine } from './tests/tools/closing-line.ts';

/** The main process runs in tests over a double of Electron; see tests/electron/double. */
const ELECTRON = fileURLToPath(new URL('tests/electron/double/electron.ts', import.meta.url));

export default defineConfig({
  resolve: { alias: [{ find: /^electron$/, replacement: ELECTRON }] },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: ['default', new ClosingLine()],
    coverage: { include: ['core/**', 'cli/**', 'electron/**'] },
  },
});
