import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { ROOT } from './repository.ts';

const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

/** Runs vitest on the given test files in a folder of their own, with the closing line alone. */
const runOf = (files: Record<string, string>): { status: number | null; lines: string[] } => {
  const folder = mkdtempSync(path.join(tmpdir(), 'closing-line-'));
  folders.push(folder);
  const reporter = JSON.stringify(path.join(ROOT, 'tests/tools/closing-line.ts'));
  const config = `import { ClosingLine } from ${reporter};
    export default { test: { globals: true, reporters: [new ClosingLine()] } };`;
  writeFileSync(path.join(folder, 'vitest.config.ts'), config);
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  const vitest = path.join(ROOT, 'node_modules/vitest/vitest.mjs');
  const { status, stdout } = spawnSync(process.execPath, [vitest, 'run', '--root', folder], {
    encoding: 'utf8',
  });
  return { status, lines: stdout.trim().split('\n') };
};

test('a run that passes ends with its counts and exits with 0', () => {
  const { status, lines } = runOf({
    'good.test.js': `test('a', () => {}); describe('b', () => { test('c', () => {}); });
      test.skip('d', () => {});`,
  });
  expect(lines).toEqual(['1 skipped', '2 passed, 0 failed']);
  expect(status).toBe(0);
});

test('failing tests, files that do not load and suites that fall over are failures', () => {
  const { status, lines } = runOf({
    'good.test.js': `test('a', () => {});`,
    'bad.test.js': `test('a', () => { throw new Error('no'); });`,
    'unloadable.test.js': `throw new Error('no');`,
    'hook.test.js': `describe('a', () => { afterAll(() => { throw new Error('no'); });
      test('b', () => {}); });`,
  });
  expect(lines.at(-1)).toBe('2 passed, 3 failed');
  expect(status).toBe(1);
});

test('an error outside any test is a failure', () => {
  const { status, lines } = runOf({
    'stray.test.js': `test('a', () => { setTimeout(() => { throw new Error('late'); }, 0);
      return new Promise((done) => setTimeout(done, 50)); });`,
  });
  expect(lines.at(-1)).toBe('1 passed, 1 failed');
  expect(status).toBe(1);
});

test('a run of no test at all, or of skipped ones only, has failed', () => {
  expect(runOf({})).toMatchObject({ status: 1, lines: ['0 passed, 0 failed'] });
  const { status, lines } = runOf({ 'a.test.js': `test.skip('a', () => {});` });
  expect(lines).toEqual(['1 skipped', '0 passed, 0 failed']);
  expect(status).toBe(1);
});
