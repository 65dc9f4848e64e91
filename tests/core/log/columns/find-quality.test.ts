import { expect, test } from 'vitest';
import { findQuality, isBadQuality } from '../../../../core/log/columns/find-quality.ts';
import { climb, sampleOf } from '../helpers.ts';

const sample = (names: string[], cells: (row: number) => (string | number)[]) =>
  sampleOf(
    names,
    climb((c, row) => [c, ...cells(row)]),
  );

test('the column that says of each value whether it is good', () => {
  const word = (row: number) => (row === 4 ? 'Bad' : 'Good');
  expect(
    findQuality(
      sample(['Time', 'Temp', 'Quality'], (row) => [word(row)]),
      1,
    ),
  ).toBe(2);
  expect(
    findQuality(
      sample(['Time', 'Temp', 'Qualität'], () => [192]),
      1,
    ),
  ).toBe(2);
});

test('of several, the one behind the temperature', () => {
  const names = ['Status', 'Temp', 'PV status', 'SP', 'SP status'];
  const rows = climb((c) => [c, 'OK', c, 'OK']).map(([, ...cells]) => ['OK', ...cells]);
  expect(findQuality(sampleOf(names, rows), 1)).toBe(2);
});

test('a state of the programme is none', () => {
  const state = (row: number) => ['ramp', 'hold', 'off'][row % 3]!;
  expect(
    findQuality(
      sample(['Time', 'Temp', 'Status'], (row) => [state(row)]),
      1,
    ),
  ).toBeNull();
  expect(
    findQuality(
      sample(['Time', 'Temp', 'Set'], (row) => [row]),
      1,
    ),
  ).toBeNull();
});

// OPC Data Access 2.05, 6.8: 192 is good, 64 uncertain, 0 bad.
test('bad by words and by codes', () => {
  for (const bad of [
    'Bad',
    'BAD - no comm',
    'schlecht',
    'ungültig',
    'mauvais',
    'error',
    '0',
    '28',
  ]) {
    expect([bad, isBadQuality(bad)]).toEqual([bad, true]);
  }
  for (const good of ['Good', 'OK', 'gut', '192', '216', '64', 'Uncertain']) {
    expect([good, isBadQuality(good)]).toEqual([good, false]);
  }
});
