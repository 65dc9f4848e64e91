import { expect, test } from 'vitest';
import { RawColumns, READ, STATES, stateOf } from '../../../../core/log/columns/raw-columns.ts';
import { REJECTIONS } from '../../../../core/log/ids.ts';

test('every reason of rejection is a state, and reading is the first', () => {
  expect(STATES[READ]).toBe('read');
  expect([...STATES.slice(1)].sort()).toEqual(Object.keys(REJECTIONS).sort());
  expect(STATES[stateOf('event')]).toBe('event');
});

test('columns grow as rows are added, and keep what is in them', () => {
  const columns = new RawColumns(2, 1, true);
  for (let row = 0; row < 100; row += 1) {
    columns.add(row + 2, READ);
    columns.time[row] = row;
    columns.values[1]![row] = 2 * row;
    columns.series[row] = row % 3;
  }
  expect(columns.capacity).toBeGreaterThanOrEqual(100);
  expect([columns.time[7], columns.values[1]![7], columns.line[7], columns.series[7]]).toEqual([
    7, 14, 9, 1,
  ]);
  expect(columns.values[0]![7]).toBeNaN();
});

test('rows can be cut off and taken out', () => {
  const columns = new RawColumns(1, 4, false);
  for (let row = 0; row < 6; row += 1) columns.time[columns.add(row + 1, READ)] = row * 10;
  columns.remove([1, 3]);
  expect([...columns.time.subarray(0, columns.length)]).toEqual([0, 20, 40, 50]);
  expect([...columns.line.subarray(0, columns.length)]).toEqual([1, 3, 5, 6]);
  columns.cutTo(2);
  expect(columns.length).toBe(2);
  columns.cutTo(9);
  expect(columns.length).toBe(2);
});

test('offsets are noted where they change', () => {
  const columns = new RawColumns(1, 4, false);
  for (const [row, minutes] of [
    [0, 60],
    [1, 60],
    [2, 120],
    [3, null],
  ] as const)
    columns.noteOffset(row, minutes);
  expect(columns.offsets).toHaveLength(3);
  expect([0, 1, 2, 3, 9].map((row) => columns.offsetAt(row))).toEqual([60, 60, 120, null, null]);
});
