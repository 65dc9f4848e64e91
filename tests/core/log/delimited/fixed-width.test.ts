import { expect, test } from 'vitest';
import { findFixedWidth } from '../../../../core/log/delimited/fixed-width.ts';

const rows = Array.from(
  { length: 20 },
  (_, i) => `06:${10 + i}${`${20 + i}.5`.padStart(8)}${(i % 3 ? '' : `${i}`).padStart(5)}`,
);

test('cells begin after what nearly all lines leave blank', () => {
  expect(findFixedWidth(['Time    Temp   No', ...rows])?.cuts).toEqual([0, 9, 16]);
  expect(findFixedWidth([...rows, '06:59 spoilt 1 2 3 4 5 6 7'])?.cuts?.[0]).toBe(0);
});

test('a few lines, tabs or a single column show none', () => {
  expect(findFixedWidth(rows.slice(0, 3))).toBeNull();
  expect(findFixedWidth(rows.map((row) => `\t${row}`))).toBeNull();
  expect(findFixedWidth(Array.from({ length: 9 }, (_, i) => `12:0${i}`))).toBeNull();
});
