import { readdirSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { DETECTORS } from '../../../core/findings/detector-list.ts';
import { FINDING_IDS } from '../../../core/model/finding.ts';

const FOLDER = path.join(import.meta.dirname, '../../../core/findings/detectors');

test('every detector’s id is a finding’s, once, in the order of FINDING_IDS by subject', () => {
  const ids = DETECTORS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.filter((id) => !FINDING_IDS.includes(id))).toEqual([]);
  const places = ids.map((id) => FINDING_IDS.indexOf(id));
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test('the list and the files agree: one detector a file, named for its id', () => {
  const files = readdirSync(FOLDER).map((file) => path.basename(file, '.ts'));
  expect(files.sort()).toEqual(DETECTORS.map(({ id }) => id as string).sort());
});

test('no detector names a fact twice', () => {
  const repeated = DETECTORS.filter(({ needs, wants }) => {
    const named = [...needs, ...wants];
    return new Set(named).size !== named.length;
  });
  expect(repeated.map(({ id }) => id)).toEqual([]);
});
