import { describe, expect, test } from 'vitest';
import { alignSeries, partSeries, type Series } from '../../../../core/log/assemble/part-series.ts';
import { RawColumns, READ, stateOf } from '../../../../core/log/columns/raw-columns.ts';

const columnsOf = (rows: readonly [number, number, number, number?][]): RawColumns => {
  const columns = new RawColumns(1, 4, true);
  for (const [series, time, value, state = READ] of rows) {
    const row = columns.add(columns.length + 2, state);
    columns.time[row] = time;
    columns.values[0]![row] = value;
    columns.series[row] = series;
  }
  return columns;
};
const usable = ({ value }: Series): boolean => value.some((reading) => !Number.isNaN(reading));

test('a long table is parted into the main channel and the others', () => {
  const columns = columnsOf([
    [0, 1, 30],
    [1, 1, 20.5],
    [0, 2, 31],
    [1, 2, NaN, stateOf('no-reading')],
  ]);
  const { main, name, others } = partSeries(
    columns,
    new Map([
      ['Setpoint', 0],
      ['Kiln', 1],
    ]),
    usable,
  );
  expect(name).toBe('Kiln');
  expect([main.length, main.line[1], main.state[1]]).toEqual([2, 5, stateOf('no-reading')]);
  expect(others).toEqual([
    { name: 'Setpoint', time: Float64Array.of(1, 2), value: Float64Array.of(30, 31) },
  ]);
});

test('a channel that gives no readings is not the main one', () => {
  const columns = columnsOf([
    [0, 1, NaN, stateOf('no-reading')],
    [1, 1, 20.5],
  ]);
  expect(
    partSeries(
      columns,
      new Map([
        ['Kiln', 0],
        ['Shelf', 1],
      ]),
      usable,
    ).name,
  ).toBe('Shelf');
});

describe('another channel is brought to the times of the main one', () => {
  const series = (time: number[], value: number[]): Series => ({
    name: 'x',
    time: Float64Array.from(time),
    value: Float64Array.from(value),
  });
  const aligned = (other: Series, at: number[], within: number) => [
    ...alignSeries(other, Float64Array.from(at), within),
  ];

  test('by equal times, the k-th where times repeat', () => {
    expect(aligned(series([1, 1, 2, 2], [10, 11, 20, 21]), [1, 1, 2, 2], 0)).toEqual([
      10, 11, 20, 21,
    ]);
    expect(aligned(series([1, 2], [10, 20]), [1, 1, 2], 0)).toEqual([10, 10, 20]);
  });

  test('else by the nearest that is near enough', () => {
    expect(aligned(series([0, 10], [10, 20]), [1, 6, 9, 30], 4)).toEqual([10, 20, 20, NaN]);
  });

  test('in whatever order its rows came, holes left out', () => {
    expect(aligned(series([2, 1, 3], [20, 10, NaN]), [1, 2, 3], 0)).toEqual([10, 20, NaN]);
  });
});
