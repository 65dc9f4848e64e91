import { expect, test } from 'vitest';
import { shownColumns } from '../../../../core/log/show/shown-columns.ts';
import { sampleOf } from '../helpers.ts';

test('columns are called by a name that means them alone, and show their first cells', () => {
  const sample = sampleOf(
    ['time', 'T [°F]', 'T [°F]', ''],
    [
      ['10:00', '70', '', 'x'.repeat(60)],
      ['10:01', '', '71', ''],
      ['10:02', '72', '72', ''],
    ],
  );
  const columns = shownColumns(sample, null, null);
  expect(columns.map(({ name }) => name)).toEqual(['time', 'T [°F]', 'T [°F]', 'column 4']);
  expect(columns.map(({ called }) => called)).toEqual(['time', 'column 2', 'column 3', 'column 4']);
  expect(columns.map(({ cells }) => cells)).toEqual([
    ['10:00', '10:01', '10:02'],
    ['70', '72'],
    ['71', '72'],
    [`${'x'.repeat(40)}…`],
  ]);
  expect(columns.map(({ unit }) => unit)).toEqual([null, 'F', 'F', null]);
  expect(columns.every(({ role }) => role === null)).toBe(true);
});

test('no more than sixty columns are shown', () => {
  const names = Array.from({ length: 300 }, (_, i) => `c${i}`);
  expect(shownColumns(sampleOf(names, [names]), null, null)).toHaveLength(60);
});
