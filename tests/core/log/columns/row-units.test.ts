import { expect, test } from 'vitest';
import { RowUnits } from '../../../../core/log/columns/row-units.ts';

test('keeps the units of single rows and how many have each', () => {
  const units = new RowUnits();
  expect(units.of(3)).toBeUndefined();
  units.note(3, 'F', 8);
  units.note(40, 'uV', 16);
  units.note(41, 'F', 64);
  expect([3, 4, 40, 41, 900].map((row) => units.of(row))).toEqual([
    ...['F', undefined, 'uV', 'F', undefined],
  ]);
  expect([...units.counts]).toEqual([
    ['F', 2],
    ['uV', 1],
  ]);
  units.move(40, 3);
  expect(units.of(3)).toBe('uV');
});
