import { describe, expect, test } from 'vitest';
import { findSeries, mainSeries } from '../../../../core/log/columns/find-series.ts';
import { sampleOf } from '../helpers.ts';

type Row = [number, string, number];
const found = (rows: Row[], name = 'channel'): number | null =>
  findSeries(
    sampleOf(['time', name, 'value'], rows),
    2,
    [0],
    rows.map(([time]) => time),
  );

const interleaved: Row[] = Array.from({ length: 60 }, (_, i) => [
  Math.floor(i / 2),
  i % 2 === 0 ? 'top' : 'bottom',
  20 + i,
]);

describe('the column of channels', () => {
  test('is seen where the clock stands still between them', () => {
    expect(found(interleaved)).toBe(1);
    expect(found(interleaved, 'x')).toBe(1);
  });

  test('is seen where the clock starts again', () => {
    const stacked = [...interleaved].sort(
      (one, other) => one[1].localeCompare(other[1]) || one[0] - other[0],
    );
    expect(found(stacked)).toBe(1);
  });

  test('is seen by its name and by smoother channels where every row has its own time', () => {
    const apart: Row[] = interleaved.map(([, name, value], i) => [
      i,
      name,
      name === 'top' ? 900 + value : value,
    ]);
    expect(found(apart, 'sensor')).toBe(1);
    expect(found(apart, 'x')).toBeNull();
  });

  test('is not a column of states or remarks', () => {
    const states: Row[] = interleaved.map(([, , value], i) => [i, i < 20 ? 'RAMP' : 'HOLD', value]);
    expect(found(states, 'State')).toBeNull();
    expect(
      found(
        states.map(([time, , value]) => [time, 'RUN', value]),
        'channel',
      ),
    ).toBeNull();
  });

  test('may hold numbers if its name says that they are channels', () => {
    const numbered: Row[] = interleaved.map(([time, name, value]) => [
      time,
      name === 'top' ? '1' : '2',
      value,
    ]);
    expect(found(numbered, 'sensor')).toBe(1);
    expect(found(numbered, 'step')).toBeNull();
  });
});

test('the main channel is the measured one, else the first', () => {
  expect(mainSeries(['Setpoint', 'Room', 'Kiln'])).toBe('Kiln');
  expect(mainSeries(['Probe-1', 'Probe-2'])).toBe('Probe-1');
  expect(mainSeries(['Setpoint', 'B', 'A'])).toBe('B');
  expect(mainSeries([])).toBeNull();
});
