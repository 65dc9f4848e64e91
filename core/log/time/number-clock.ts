import { SECONDS_PER_DAY } from './civil.ts';

/** A time of day written as one number: `0630`, `063000`, `6.30`, or the share of the day gone. */
export type NumberClock = 'hhmm' | 'hhmmss' | 'hh.mm' | 'day-share';

/** Fewer times than this show no clock (chosen). */
const FEWEST = 4;

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;

/** Seconds of the day of `hhmmss` as one whole number; NaN where it is no time of day. */
const ofDigits = (value: number): number => {
  const hours = Math.floor(value / 10_000);
  const minutes = Math.floor(value / 100) % 100;
  const seconds = value % 100;
  return hours < 24 && minutes < 60 && seconds < 60
    ? hours * 3600 + minutes * 60 + seconds
    : Number.NaN;
};

const SECONDS_OF: Readonly<Record<NumberClock, (value: number) => number>> = {
  hhmm: (value) => ofDigits(value * 100),
  hhmmss: (value) => ofDigits(value),
  'hh.mm': (value) => ofDigits(Math.round(value * 100) * 100),
  'day-share': (value) => Math.round(value * SECONDS_PER_DAY * 1e3) / 1e3,
};

/** The seconds of the day that such a number stands for; NaN for one that is no time of day. */
export const secondsOfNumberClock = (value: number, form: NumberClock): number =>
  SECONDS_OF[form](value);

const distinctSteps = (values: readonly number[]): number =>
  new Set(values.slice(1).map((value, index) => Math.round((value - values[index]!) * 1e4))).size;

/** Whether all numbers are times of day in a form, and run more evenly as such than as numbers. */
const runsAs = (values: readonly number[], form: NumberClock): boolean => {
  const seconds = values.map(SECONDS_OF[form]);
  return !seconds.some(Number.isNaN) && distinctSteps(seconds) < distinctSteps(values);
};

/**
 * The clock that numbers without a unit are written as, or null if they count. `values` are in file
 * order, without NaN.
 */
export const numberClockOf = (values: readonly number[]): NumberClock | null => {
  if (values.length < FEWEST || values.some((value) => value < 0)) return null;
  const largest = values.reduce((most, value) => Math.max(most, value), 0);
  if (!values.every(isWhole)) {
    const isHundredths = largest < 24 && values.every((value) => isWhole(value * 100));
    return isHundredths && runsAs(values, 'hh.mm') ? 'hh.mm' : null;
  }
  const form = largest < 2400 ? 'hhmm' : 'hhmmss';
  return runsAs(values, form) ? form : null;
};
