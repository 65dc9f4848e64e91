import { defineConfig } from 'vitest/config';
import { ClosingLine } from './tests/tools/closing-line.ts';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    reporters: ['default', new ClosingLine()],
    coverage: { include: ['core/**', 'cli/**', 'electron/**'] },
  },
});
