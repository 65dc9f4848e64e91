import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { MOST_KEPT_RULES } from '../../../electron/host/contract.ts';
import { keptRules } from '../../../electron/host/kept-rules.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'rules-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const rule = (shape: string, name = shape) => ({
  ...{ name, shape, decisions: { unit: 'F' as const } },
});
const shapes = () => keptRules.read(folder).map(({ shape }) => shape);

test('there is one rule for each shape, the last changed first', () => {
  expect(keptRules.read(folder)).toEqual([]);
  keptRules.keep(folder, rule('A'));
  keptRules.keep(folder, rule('B'));
  expect(keptRules.keep(folder, rule('A', 'mine'))).toEqual([rule('A', 'mine'), rule('B')]);
  expect(keptRules.read(folder)).toEqual([rule('A', 'mine'), rule('B')]);
});

test('one is forgotten by its shape, and the oldest where there are too many', () => {
  for (let count = 0; count <= MOST_KEPT_RULES; count++) keptRules.keep(folder, rule(`S${count}`));
  expect(shapes()).toHaveLength(MOST_KEPT_RULES);
  expect(shapes()).not.toContain('S0');
  keptRules.forget(folder, { shape: 'S3' });
  expect(shapes()).toHaveLength(MOST_KEPT_RULES - 1);
  expect(shapes()).not.toContain('S3');
});

test('what cannot be understood counts as nothing', () => {
  writeFileSync(
    join(folder, 'reading-rules.json'),
    '[{"name":"A","shape":"x","decisions":{"no":1}}]',
  );
  expect(keptRules.read(folder)).toEqual([]);
});
