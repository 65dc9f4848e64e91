import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { warnOfCourse } from '../../../../core/log/assemble/warn-of-course.ts';
import { RawColumns, READ, stateOf } from '../../../../core/log/columns/raw-columns.ts';

const NO_READING = stateOf('no-reading');
const warnings = (
  main: readonly number[],
  other: readonly number[] = [],
  lastState?: number,
): string[] => {
  const columns = new RawColumns(2, 4, false);
  main.forEach((value, row) => {
    columns.add(row + 2, Number.isNaN(value) ? NO_READING : READ);
    columns.values[0]![row] = value;
    columns.values[1]![row] = other[row] ?? NaN;
  });
  if (lastState !== undefined) columns.state[columns.length - 1] = lastState;
  const kept = Uint32Array.from(
    [...columns.state.subarray(0, columns.length).keys()].filter(
      (row) => columns.state[row] === READ,
    ),
  );
  const account = new Account();
  warnOfCourse(
    columns,
    kept,
    Float64Array.from(kept, (row) => main[row]!),
    columns.length - kept.length,
    account,
  );
  return account.warnings();
};
const climb = Array.from({ length: 100 }, (_, i) => 20 + 10 * i);

describe('a warning', () => {
  test('is not given for a plain log', () => {
    expect(warnings(climb, climb)).toEqual([]);
  });

  test('of many rejected rows, and of a couple that stops while others go on', () => {
    const dying = climb.map((value, row) => (row < 60 ? value : NaN));
    expect(warnings(dying, climb)).toEqual(['many-rows-rejected', 'main-stops-early']);
    expect(warnings(dying)).toEqual(['many-rows-rejected']);
  });

  test('of readings at a floor', () => {
    expect(warnings(climb.map((value) => Math.max(795, value)))).toEqual(['readings-at-floor']);
    expect(warnings(climb.map((value) => Math.max(60, value)))).toEqual([]);
  });

  test('of a last line that was cut', () => {
    expect(warnings(climb, [], stateOf('half-written'))).toEqual(['half-written-end']);
  });
});
