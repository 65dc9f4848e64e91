import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { keptPreferences } from '../../../electron/host/preferences.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

test('what was kept is read again, from a folder made for it, and nothing else is left there', () => {
  const below = join(folder, 'not/there/yet');
  expect(keptPreferences.read(below)).toBeNull();
  keptPreferences.keep(below, DEFAULT_PREFERENCES);
  const changed = { ...DEFAULT_PREFERENCES, unit: 'F' as const };
  keptPreferences.keep(below, changed);
  expect(keptPreferences.read(below)).toEqual(changed);
  expect(readdirSync(below)).toEqual(['preferences.json']);
});

test.each(['', '{', 'null', '{"unit":"K"}', '{"unit":"C","theme":"dark","textPercent":1e9}'])(
  'what cannot be understood counts as nothing: %s',
  (text) => {
    writeFileSync(join(folder, 'preferences.json'), text);
    expect(keptPreferences.read(folder)).toBeNull();
  },
);

test('a place that cannot be written to disturbs nobody', () => {
  const path = join(folder, 'a-file');
  writeFileSync(path, '');
  keptPreferences.keep(path, DEFAULT_PREFERENCES);
  expect(keptPreferences.read(path)).toBeNull();
});
