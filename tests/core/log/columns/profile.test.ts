import { describe, expect, test } from 'vitest';
import {
  agrees,
  holdsTimes,
  profileColumn,
  profileColumns,
  profileNumbers,
} from '../../../../core/log/columns/profile.ts';

const rows = [
  ['1', '2024-03-14 06:30', '20.5 °C', ''],
  ['2', '2024-03-14 06:40', 'OPEN', ''],
  ['3', '2024-03-14 06:50', '41,0 °C', 'x'],
  ['4'],
];

describe('a column', () => {
  test('has the commonest class of its cells, marks and empty cells aside', () => {
    expect(profileColumns(rows, 4, '.').map(({ kind }) => kind)).toEqual([
      'number',
      'stamp',
      'quantity',
      'text',
    ]);
    expect(profileColumn(rows, 2, '.').agreement).toBe(0.5);
    expect(profileColumn(rows, 3, '.').filled).toBe(0.25);
  });

  test('has its numbers in order, NaN where there is none', () => {
    expect([...profileColumn(rows, 0, '.').values]).toEqual([1, 2, 3, 4]);
    expect([...profileColumn(rows, 2, '.').values]).toEqual([20.5, NaN, NaN, NaN]);
    expect(profileColumn(rows, 1, '.').numbers).toBeNull();
  });

  test('holds times if nearly all its cells do', () => {
    const [counting, stamps, temperatures] = profileColumns(rows, 4, '.');
    expect(holdsTimes(stamps!)).toBe(true);
    expect(holdsTimes(counting!)).toBe(false);
    expect(agrees(temperatures!)).toBe(false);
  });
});

describe('numbers', () => {
  test('show their range, whether they rise, and whether they count', () => {
    expect(profileNumbers(Float64Array.of(3, NaN, 1, 2, 2))).toEqual({
      ...{ count: 4, min: 1, max: 3, median: 2, isConstant: false, isInteger: true },
      ...{ rising: 2 / 3, countsUp: false },
    });
    expect(profileNumbers(Float64Array.of(7, 8, 9))?.countsUp).toBe(true);
    expect(profileNumbers(Float64Array.of(5, 5))).toMatchObject({ isConstant: true, rising: 1 });
    expect(profileNumbers(Float64Array.of(NaN))).toBeNull();
  });
});
