import type { Account } from '../account.ts';
import { READ, stateOf, type RawColumns } from '../columns/raw-columns.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { findImpossible } from './find-impossible.ts';
import { present } from './gather.ts';
import { isBelowAbsoluteZero } from './to-celsius.ts';
import type { ResolvedTime } from './resolve-time.ts';

const NO_READING = stateOf('no-reading');
const UNREADABLE_TIME = stateOf('unreadable-time');

/** The main temperatures of the rows that were read, in file order. */
export const readingsOf = (columns: RawColumns): Float64Array => {
  const main = columns.values[0]!;
  const readings = new Float64Array(columns.length);
  let count = 0;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ) {
      readings[count] = main[row]!;
      count += 1;
    }
  }
  return readings.subarray(0, count);
};

/** Takes impossible numbers for missing readings, and returns them. */
export const rejectImpossible = (columns: RawColumns): ReadonlySet<number> => {
  const impossible = findImpossible(readingsOf(columns));
  if (impossible.size === 0) return impossible;
  const main = columns.values[0]!;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ && impossible.has(main[row]!)) columns.state[row] = NO_READING;
  }
  return impossible;
};

/** Takes readings below absolute zero in the unit for missing ones, and returns them. */
export const rejectBelowAbsoluteZero = (
  columns: RawColumns,
  unit: ChannelUnit,
): ReadonlySet<number> => {
  const main = columns.values[0]!;
  const rejected = new Set<number>();
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] !== READ || !isBelowAbsoluteZero(main[row]!, unit)) continue;
    columns.state[row] = NO_READING;
    rejected.add(main[row]!);
  }
  return rejected;
};

/** Takes the impossible numbers of a column other than the main one out of it. */
export const withoutImpossible = (values: Float64Array, unit: ChannelUnit): Float64Array => {
  const impossible = findImpossible(present(values));
  const possible = values.slice();
  for (let row = 0; row < possible.length; row += 1) {
    const value = possible[row]!;
    const isGone = impossible.size > 0 && impossible.has(value);
    if (isGone || isBelowAbsoluteZero(value, unit)) possible[row] = Number.NaN;
  }
  return possible;
};

/** Rows whose time turned out to be none after all. */
export const rejectUntimed = (columns: RawColumns, time: ResolvedTime): void => {
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ && !Number.isFinite(time.seconds[row]!)) {
      columns.state[row] = UNREADABLE_TIME;
    }
  }
};

/** Accounts for what stood where readings are missing. */
export const accountForMarks = (
  words: ReadonlyMap<string, number>,
  numbers: readonly number[],
  account: Account,
): void => {
  if (numbers.length > 0) account.warn('impossible-numbers');
  const marks = [...[...words.keys()].slice(0, 8), ...numbers.slice(0, 8).map(String)];
  if (marks.length === 0) return;
  const why = numbers.length > 0 ? 'impossible-values' : 'known-words';
  account.decide('no-reading-marks', marks.join(', '), why, numbers.length > 0 ? 0.85 : 0.97);
};
