import type { Account } from '../account.ts';
import { stateOf, type RawColumns } from '../columns/raw-columns.ts';
import { extentOf } from './gather.ts';

const HALF_WRITTEN = stateOf('half-written');
const MANY_REJECTED = 0.1;
/** The main thermocouple stops early if it reads in less than this share of the rows' course. */
const STOPS_BEFORE = 0.95;
/** So many of the readings within so little of the lowest are a floor (chosen). */
const FLOOR_SHARE = 0.3;
const FLOOR_WIDTH_C = 1;
/** A floor lies above what a kiln at rest can be, and well below the log's peak (chosen). */
const LEAST_FLOOR_C = 150;
const LEAST_ABOVE_FLOOR_C = 100;

const goesOnAfter = (columns: RawColumns, last: number): boolean =>
  columns.values.slice(1).some((values) => {
    for (let row = last + 1; row < columns.length; row += 1) {
      if (!Number.isNaN(values[row]!)) return true;
    }
    return false;
  });

const liesAtFloor = (celsius: Float64Array): boolean => {
  const { min, max } = extentOf(celsius);
  if (min < LEAST_FLOOR_C || max < min + LEAST_ABOVE_FLOOR_C) return false;
  let low = 0;
  for (let i = 0; i < celsius.length; i += 1) if (celsius[i]! <= min + FLOOR_WIDTH_C) low += 1;
  return low >= FLOOR_SHARE * celsius.length;
};

/** Warns of what the person should look at before trusting the readings. */
export const warnOfCourse = (
  columns: RawColumns,
  kept: Uint32Array,
  celsius: Float64Array,
  rejected: number,
  account: Account,
): void => {
  if (columns.state[columns.length - 1] === HALF_WRITTEN) account.warn('half-written-end');
  if (rejected > MANY_REJECTED * columns.length) account.warn('many-rows-rejected');
  const last = kept[kept.length - 1] ?? 0;
  if (last < STOPS_BEFORE * (columns.length - 1) && goesOnAfter(columns, last)) {
    account.warn('main-stops-early');
  }
  if (liesAtFloor(celsius)) account.warn('readings-at-floor');
};
