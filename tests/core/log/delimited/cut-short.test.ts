import { expect, test } from 'vitest';
import { isCutShort } from '../../../../core/log/delimited/cut-short.ts';

/** Whether the last of the cells of one column was cut short. */
const isCut = (...cells: string[]): boolean =>
  isCutShort(
    [cells.at(-1)!],
    0,
    cells.map((cell) => [cell]),
    '.',
  );

test('a number with fewer decimals than most was cut, even where some have none', () => {
  expect(isCut('20.5', '21', '22.3', '23.1', '24.4', '25.')).toBe(true);
  expect(isCut('20.5', '21', '22.3', '23.1', '24.4', '25')).toBe(true);
  expect(isCut('20', '21', '22.3', '23', '24', '25')).toBe(false);
  expect(isCut('20.5', '21.5', '22.3', '23.4')).toBe(false);
});

test('a number with fewer digits was cut where it stands far from the rows before', () => {
  expect(isCut('1200', '1205', '1209', '1214', '12')).toBe(true);
  expect(isCut('1012', '1007', '1003', '998')).toBe(false);
});

test('a time was cut where all others are as long', () => {
  expect(isCut('06:00:00', '06:10:00', '06:20:0')).toBe(true);
  expect(isCut('9:50', '10:00', '10:10', '1:20')).toBe(false);
});

test('a word or an empty cell is not', () => {
  expect(isCut('20.5', '21.5', 'OPEN')).toBe(false);
  expect(isCut('20.5', '21.5', '')).toBe(false);
  expect(isCut('20.5')).toBe(false);
});
