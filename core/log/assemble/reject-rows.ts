import type { Account } from '../account.ts';
import { READ, stateOf, type RawColumns } from '../columns/raw-columns.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { findImpossible } from './find-impossible.ts';
import { present } from './gather.ts';
import { isBelowAbsoluteZero } from './to-celsius.ts';
import type { ResolvedTime } from './resolve-time.ts';

const NONE: ReadonlySet<number> = new Set();
const NO_READING = stateOf('no-reading');
const UNREADABLE_TIME = stateOf('unreadable-time');

const areAllRead = (states: Uint8Array): boolean => {
  for (let row = 0; row < states.length; row += 1) if (states[row] !== READ) return false;
  return true;
};

/** The main temperatures of the rows that were read, in file order; a view where that is all. */
export const readingsOf = (columns: RawColumns): Float64Array => {
  const main = columns.values[0]!;
  const states = columns.state.subarray(0, columns.length);
  if (areAllRead(states)) return main.subarray(0, columns.length);
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

/**
 * Takes impossible numbers for missing readings, and those that the person says are; returns the
 * former. `unit` is what the file says, if it does.
 */
export const rejectImpossible = (
  columns: RawColumns,
  given: ReadonlySet<number> = NONE,
  unit: ChannelUnit | null = null,
): ReadonlySet<number> => {
  rejectNumbers(columns, given);
  const impossible = findImpossible(readingsOf(columns), unit);
  rejectNumbers(columns, impossible);
  return impossible;
};

const rejectNumbers = (columns: RawColumns, impossible: ReadonlySet<number>): void => {
  if (impossible.size === 0) return;
  const main = columns.values[0]!;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ && impossible.has(main[row]!)) columns.state[row] = NO_READING;
  }
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
export const withoutImpossible = (
  values: Float64Array,
  given: ReadonlySet<number> = NONE,
  unit: ChannelUnit | null = null,
): Float64Array => {
  const isGone = (value: number): boolean => given.has(value);
  // Not a copy: callers hand in what is theirs to change.
  const possible = given.size === 0 ? values : values.map((v) => (isGone(v) ? NaN : v));
  const impossible = findImpossible(present(possible), unit);
  if (impossible.size === 0) return possible;
  for (let row = 0; row < possible.length; row += 1) {
    if (impossible.has(possible[row]!)) possible[row] = Number.NaN;
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

/** What stood where readings are missing. */
export interface MarksMet {
  readonly words: readonly string[];
  /** Numbers that cannot be readings. */
  readonly numbers: readonly number[];
  /** What the person says are marks. */
  readonly given: readonly string[];
}

/** Accounts for what stood where readings are missing. */
export const accountForMarks = (met: MarksMet, account: Account): void => {
  const { words, numbers, given } = met;
  if (numbers.length > 0) account.warn('impossible-numbers');
  const found = [...words.slice(0, 8), ...numbers.slice(0, 8).map(String)];
  const marks = [...new Set([...given.slice(0, 8), ...found])];
  if (marks.length === 0) return;
  const choice = marks.join(', ');
  if (given.length > 0) account.decide('no-reading-marks', choice, 'given', 1);
  else if (numbers.length > 0) {
    account.decide('no-reading-marks', choice, 'impossible-values', 0.85);
  } else account.decide('no-reading-marks', choice, 'known-words', 0.97);
};
