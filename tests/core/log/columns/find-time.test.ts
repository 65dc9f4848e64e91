import { describe, expect, test } from 'vitest';
import { findTime, givenTime } from '../../../../core/log/columns/find-time.ts';
import { climb, sampleOf } from '../helpers.ts';

const best = (...parts: Parameters<typeof sampleOf>) => {
  const [first] = findTime(sampleOf(...parts));
  return first === undefined ? null : [first.form, first.columns];
};
const counted = (cells: (row: number) => (string | number)[]) =>
  Array.from({ length: 30 }, (_, row) => cells(row));
const two = (value: number): string => String(value).padStart(2, '0');

describe('the time is found', () => {
  test('in stamps, before anything elapsed', () => {
    expect(
      best(
        ['Time', 'Elapsed (s)', 'Temp'],
        climb((c, row) => [row * 600, c]),
      ),
    ).toEqual(['stamp', [0]]);
  });

  test('in stamps that move, not in one that stands', () => {
    const rows = climb((c) => ['2024-03-14 06:00:00', c]).map(([moving, still, c]) => [
      still!,
      moving!,
      c!,
    ]);
    expect(best(['Started', 'Time', 'Temp'], rows)).toEqual(['stamp', [1]]);
  });

  test('in a date and a clock apart, also with points or as bare digits', () => {
    const dotted = counted((row) => ['14.03.2024', `06.${two(row)}`, 20 + row * 3]);
    expect(best(['Data', 'Ora', 'Forno'], dotted)).toEqual(['date-and-clock', [0, 1]]);
    const bare = counted((row) => [20240314, Number(`63${two(row)}`), 20.5 + row]);
    expect(best(['Date', 'Time', 'Temp'], bare)).toEqual(['date-and-clock', [0, 1]]);
  });

  test('in columns for the year, the month and so on', () => {
    const rows = counted((row) => [2024, 3, 14, 6, row, 20.5 + row]);
    expect(best(['Year', 'Month', 'Day', 'Hour', 'Minute', 'Temp'], rows)).toEqual([
      'parts',
      [0, 1, 2, 3, 4, -1],
    ]);
  });

  test('in fourteen digits, epochs and days of a spreadsheet', () => {
    expect(
      best(
        2,
        counted((row) => [`202403140630${two(row)}`, 20.5 + row]),
      ),
    ).toEqual(['stamp', [0]]);
    expect(
      best(
        2,
        counted((row) => [1710397800 + row, 20.5 + row]),
      ),
    ).toEqual(['number', [0]]);
    expect(
      best(
        2,
        counted((row) => [45365.25 + row / 1440, 20.5 + row]),
      ),
    ).toEqual(['number', [0]]);
  });

  test('in a column of numbers that its name or unit says is one', () => {
    const rows = counted((row) => [20.5 + row, row * 5]);
    expect(best(['Temp (°C)', 'Time (min)'], rows)).toEqual(['number', [1]]);
    expect(best(['Temp', 't'], rows, { unitsRow: ['[°C]', '[s]'] })).toEqual(['number', [1]]);
    expect(best(['Four (°C)', 'Temps'], rows)).toEqual(['number', [1]]);
  });

  test('whichever way the rows are ordered', () => {
    const rows = counted((row) => [(29 - row) * 5, 900 - row]);
    expect(best(['Time (s)', 'Temp'], rows)).toEqual(['number', [0]]);
  });

  test('in the elapsed column that does not start again', () => {
    const rows = counted((row) => [`00:0${row % 5}:00`, `00:${two(row)}:00`, 20.5 + row]);
    expect(best(['Step Time', 'Total Time', 'Temp'], rows)).toEqual(['clock', [1]]);
  });

  test('in unnamed numbers that only ever rise, ahead of the rest', () => {
    expect(
      best(
        2,
        counted((row) => [row * 30, 20.5 + ((row * 7) % 5)]),
      ),
    ).toEqual(['number', [0]]);
  });
});

describe('the time is not found', () => {
  test('in a counting column or in temperatures', () => {
    expect(
      best(
        ['Index', 'Temp (°C)'],
        counted((row) => [row + 1, 20.5 + row]),
      ),
    ).toBeNull();
    expect(
      best(
        ['Sample', 'Kiln'],
        counted((row) => [row + 1, 20.5 + row]),
      ),
    ).toBeNull();
  });
});

test('hours and minutes of a time elapsed may stand in columns of their own', () => {
  const parts = (names: string[], minutes: (row: number) => number) =>
    findTime(
      sampleOf(
        names,
        counted((row) => [Math.floor(row / 6), minutes(row), 20.5 + row]),
      ),
    )[0];
  const tens = (row: number) => (row % 6) * 10;
  expect(parts(['Hours', 'Minutes', 'Kiln °C'], tens)).toMatchObject({
    form: 'clock-parts',
    columns: [0, 1, -1],
  });
  expect(parts(['h', 'min', 'Kiln °C'], tens)?.form).toBe('clock-parts');
  // The least temperature is no minute.
  expect(parts(['h', 'min', 'Kiln °C'], (row) => 20 + 5 * row)?.form).toBe('number');
});

test('a date and a clock may be numbers of a spreadsheet', () => {
  const rows = counted((row) => [45_365, 0.25 + row / 144, 20.5 + row]);
  expect(findTime(sampleOf(['Date', 'Time', 'Kiln'], rows))[0]).toMatchObject({
    form: 'date-and-clock',
    columns: [0, 1],
  });
});

test('columns that the person gives are taken as what they hold', () => {
  const sample = sampleOf(
    ['a', 'b', 'c', 'd'],
    counted((row) => [`06:${two(row)}`, '2024-03-14', row, 'x']),
  );
  expect(givenTime(sample, [0, 1])).toMatchObject({ form: 'date-and-clock', columns: [1, 0] });
  expect(givenTime(sample, [0])).toMatchObject({ form: 'clock' });
  expect(givenTime(sample, [2])).toMatchObject({ form: 'number' });
  expect(givenTime(sample, [3])).toBeNull();
  expect(givenTime(sample, [])).toBeNull();
});
