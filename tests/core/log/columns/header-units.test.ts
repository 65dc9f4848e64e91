import { expect, test } from 'vitest';
import { headerUnits } from '../../../../core/log/columns/header-units.ts';

test('units come from the row of units, else from the names', () => {
  expect(headerUnits(['Time', 'Kiln', 'Shelf (°F)'], ['[s]', '[°C]', ''])).toEqual(['s', 'C', 'F']);
  expect(headerUnits(['Time (min)', 'T/K'], null)).toEqual(['min', 'K']);
});

test('a letter set off at the end is a unit, unless it names one of several places', () => {
  expect(headerUnits(['time', 'kiln_c', 'oven_f'], null)).toEqual([null, 'C', 'F']);
  expect(headerUnits(['kiln_a', 'kiln_b', 'kiln_c'], null)).toEqual([null, null, null]);
  expect(headerUnits(['Zone C', 'Oven F'], null)).toEqual([null, 'F']);
  expect(headerUnits(['t', 'c'], null)).toEqual([null, 'C']);
  expect(headerUnits(['A', 'B', 'C'], null)).toEqual([null, null, null]);
});
