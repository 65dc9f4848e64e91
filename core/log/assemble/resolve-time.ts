import type { Account } from '../account.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { RawColumns } from '../columns/raw-columns.ts';
import type { TableSample } from '../columns/sample.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { secondsIn, timeScale } from '../text/unit-text.ts';
import { isoInstant, SECONDS_PER_DAY } from '../time/civil.ts';
import { givenNumericTime } from '../time/given-number-time.ts';
import { decideNumericTime, SERIAL_OF_EPOCH, type NumericTime } from '../time/numeric-time.ts';
import { numberClockOf, secondsOfNumberClock, type NumberClock } from '../time/number-clock.ts';
import { scanStamp } from '../time/stamp.ts';
import { extentOf, present } from './gather.ts';
import { firstDay } from './first-day.ts';
import type { ResolvedTime } from './resolved-time.ts';
import { wallClock } from './wall-clock.ts';

export type { ResolvedTime };
import { unwrapClock } from './unwrap-clock.ts';

/** Days of the leap year given to dates without a year. */
const DAYS_OF_YEARLESS = 366;
/** No clock of a log runs on for longer (chosen). */
const MOST_DAYS = 400;
/** Two-number clocks beyond so many hours count minutes and seconds (chosen). */
const MOST_HOURS = 100;

const elapsedOnly = (seconds: Float64Array, pattern: string): ResolvedTime => ({
  seconds,
  kind: 'elapsed',
  pattern,
  instantOf: () => null,
});

/** A record's first row may be this much before the noted start: clocks differ (chosen). */
const START_SLACK_SECONDS = 3600;

/** Times elapsed since a start that stands above the table, or since nobody knows when. */
const sinceStart = (
  seconds: Float64Array,
  pattern: string,
  plan: ColumnPlan,
  sample: TableSample,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const asked = { isContinental: plan.decimalMark === ',', needsClock: true };
  const start = firstDay(sample, decisions, asked, account);
  if (start === null) return elapsedOnly(seconds, pattern);
  const wall = seconds.map((value) => value + start.startClockSeconds!);
  return { ...wallClock(wall, start.days, pattern, decisions, account), kind: 'elapsed' };
};

/** Times of day on the day that the person or the file gives, if either does. */
const datedClock = (
  seconds: Float64Array,
  pattern: string,
  plan: ColumnPlan,
  sample: TableSample,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const { first, min, max } = extentOf(seconds);
  // A clock that begins with 0 counts from the start, unless the person says which day it is.
  const countsOn = decisions.firstDate === undefined && min === 0;
  if (countsOn || max - min > SECONDS_PER_DAY * MOST_DAYS) {
    return sinceStart(seconds, pattern, plan, sample, decisions, account);
  }
  const asked = { isContinental: plan.decimalMark === ',', needsClock: false };
  const day = firstDay(sample, decisions, asked, account);
  if (day === null) return elapsedOnly(seconds, pattern);
  const isNextDay = first < (day.startClockSeconds ?? 0) - START_SLACK_SECONDS;
  return wallClock(seconds, day.days + (isNextDay ? 1 : 0), pattern, decisions, account);
};

const hasFractions = (values: Float64Array): boolean => {
  for (let i = 0; i < values.length; i += 1)
    if (values[i]! % 1 !== 0 && values[i] === values[i]) return true;
  return false;
};

const decideNumbers = (
  plan: ColumnPlan,
  sample: TableSample,
  bare: Float64Array,
  riseC: number,
  decisions: ReadingDecisions,
): NumericTime => {
  const column = 'column' in plan.time ? plan.time.column : 0;
  const { min, max } = extentOf(bare);
  const isFractional = hasFractions(bare);
  const header = timeScale(sample.units[column] ?? null);
  const course = { span: max - min, riseC, isFractional };
  const found = decideNumericTime(min, max, header, course, sample.names[column]);
  return givenNumericTime(decisions, min, max, found, course) ?? found;
};

/** A clock written as a number shows within so many rows (chosen). */
const CLOCKS_LOOKED_AT = 5000;

/** The clock that bare numbers are written as; null where a unit is said or they count. */
const writtenClock = (
  bare: Float64Array,
  { from, unit, why }: NumericTime,
  { timeUnit, timeFrom }: ReadingDecisions,
): NumberClock | null => {
  const isOpen = timeUnit === undefined && timeFrom === undefined && why !== 'header';
  if (!isOpen || from !== 'elapsed') return null;
  const { first, min, max } = extentOf(bare);
  if (unit === 'd' && first > 0 && min >= 0 && max < 1) return 'day-share';
  return numberClockOf([...present(bare.subarray(0, CLOCKS_LOOKED_AT))]);
};

/** Times of day that are written as numbers, `0630` or `0.2708`. */
const resolveNumberClock = (
  form: NumberClock,
  bare: Float64Array,
  plan: ColumnPlan,
  sample: TableSample,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const pattern = form === 'day-share' ? 'share of the day' : form;
  account.decide('time-pattern', pattern, 'rows-agree', 0.7);
  account.warn('time-unit-assumed');
  const clock = bare.map((value) => secondsOfNumberClock(value, form));
  return runOn(clock, false, pattern, plan, sample, decisions, account);
};

/** Times of day, over every midnight, on the day that the person or the file gives. */
const runOn = (
  clock: Float64Array,
  hasHalf: boolean,
  pattern: string,
  plan: ColumnPlan,
  sample: TableSample,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const { seconds, assumption } = unwrapClock(clock, hasHalf);
  if (assumption !== null) account.assume(assumption);
  const resolved = datedClock(seconds, pattern, plan, sample, decisions, account);
  if (assumption !== null && resolved.instantOf(0) === null) account.warn('no-date');
  return resolved;
};

/** Hours, minutes and seconds from columns of their own. */
const resolveClockParts = (
  plan: ColumnPlan,
  sample: TableSample,
  columns: RawColumns,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const pattern = 'hours, minutes and seconds apart';
  account.decide('time-pattern', pattern, 'name', 0.9);
  const clock = columns.time.subarray(0, columns.length);
  return runOn(clock, false, pattern, plan, sample, decisions, account);
};

/** Numbers become seconds after the first of them is taken off, so that no decimals are lost. */
const resolveNumbers = (
  plan: ColumnPlan,
  sample: TableSample,
  columns: RawColumns,
  riseC: number,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const bare = columns.time.subarray(0, columns.length);
  const numeric = decideNumbers(plan, sample, bare, riseC, decisions);
  const clock = writtenClock(bare, numeric, decisions);
  if (clock !== null) return resolveNumberClock(clock, bare, plan, sample, decisions, account);
  account.decide('time-unit', numeric.unit, numeric.why, numeric.certainty);
  if (numeric.assumption !== null) {
    account.assume(numeric.assumption);
    account.warn('time-unit-assumed');
  }
  const scale = secondsIn(numeric.unit);
  const zero = numeric.from === 'elapsed' ? 0 : (bare.find((value) => !Number.isNaN(value)) ?? 0);
  const seconds = scale === 1 && zero === 0 ? bare : bare.map((value) => (value - zero) * scale);
  const pattern = numeric.from === 'elapsed' ? 'elapsed' : numeric.from;
  account.decide('time-pattern', `${pattern} ${numeric.unit}`, numeric.why, numeric.certainty);
  if (numeric.from === 'elapsed') {
    return sinceStart(seconds, `elapsed ${numeric.unit}`, plan, sample, decisions, account);
  }
  const isEpoch = numeric.from === 'epoch';
  const dayOfEpoch = numeric.dayOfEpoch ?? SERIAL_OF_EPOCH;
  const zeroSeconds = isEpoch ? zero * scale : (zero - dayOfEpoch) * SECONDS_PER_DAY;
  const zeroDays = Math.floor(zeroSeconds / SECONDS_PER_DAY);
  const ofDay = zeroSeconds - zeroDays * SECONDS_PER_DAY;
  // Days of a spreadsheet carry about ten digits behind the day: no more than milliseconds.
  const rounded = (value: number): number => Math.round(value * 1e3) / 1e3;
  if (!isEpoch) {
    const wall = seconds.map((value) => rounded(ofDay + value));
    const count = dayOfEpoch === SERIAL_OF_EPOCH ? 'spreadsheet days' : 'days of a calendar count';
    return wallClock(wall, zeroDays, count, decisions, account);
  }
  return {
    seconds,
    kind: 'instant',
    pattern: `epoch ${numeric.unit}`,
    instantOf: (row) => isoInstant(zeroDays, rounded(ofDay + seconds[row]!), 0),
  };
};

const resolveClock = (
  plan: ColumnPlan,
  sample: TableSample,
  columns: RawColumns,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const column = 'column' in plan.time ? plan.time.column : 0;
  const stamps = sample.rows
    .map((row) => scanStamp(row[column] ?? ''))
    .filter((stamp) => stamp !== null);
  const clock = columns.time.subarray(0, columns.length);
  const groups = stamps[0]?.clockGroups ?? 0;
  const name = sample.names[column] ?? '';
  const { max } = extentOf(clock);
  const isMinutes = groups === 2 && (max >= MOST_HOURS * 3600 || /mm:ss|min:s/i.test(name));
  const pattern = isMinutes ? 'mm:ss' : groups === 2 ? 'hh:mm' : 'hh:mm:ss';
  const hasHalf = stamps.some((stamp) => stamp.half !== null);
  account.decide('time-pattern', hasHalf ? `${pattern} am/pm` : pattern, 'rows-agree', 0.8);
  if (isMinutes) {
    account.assume('minutes-and-seconds');
    return elapsedOnly(
      clock.map((seconds) => seconds / 60),
      pattern,
    );
  }
  const printed = hasHalf ? `${pattern} am/pm` : pattern;
  return runOn(clock, hasHalf, printed, plan, sample, decisions, account);
};

/** Dates without a year: a fall of most of a year is New Year. */
const acrossNewYear = (seconds: Float64Array): Float64Array => {
  const year = DAYS_OF_YEARLESS * SECONDS_PER_DAY;
  let added = 0;
  let last = -Infinity;
  return seconds.map((value) => {
    if (Number.isNaN(value)) return value;
    if (value < last - year / 2) added += year;
    last = value;
    return value + added;
  });
};

const resolveDates = (
  plan: ColumnPlan,
  columns: RawColumns,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const pattern = account.decisions().find(({ what }) => what === 'time-pattern')?.choice ?? '';
  const seconds = columns.time.subarray(0, columns.length);
  if (account.assumptions().includes('no-year'))
    return elapsedOnly(acrossNewYear(seconds), pattern);
  if (columns.offsets.every(({ minutes }) => minutes === null)) {
    return wallClock(seconds, plan.originDays, pattern, decisions, account);
  }
  return {
    seconds,
    kind: 'instant',
    pattern,
    instantOf: (row) => {
      const offset = columns.offsetAt(row);
      return isoInstant(plan.originDays, seconds[row]! + (offset ?? 0) * 60, offset);
    },
  };
};

/** Turns the times that were read into seconds on one clock. `riseC` helps to tell bare numbers. */
export const resolveTime = (
  plan: ColumnPlan,
  sample: TableSample,
  columns: RawColumns,
  riseC: number,
  decisions: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  const { form } = plan.time;
  if (form === 'number') return resolveNumbers(plan, sample, columns, riseC, decisions, account);
  if (form === 'clock-parts') {
    return resolveClockParts(plan, sample, columns, decisions, account);
  }
  if (form === 'clock') return resolveClock(plan, sample, columns, decisions, account);
  if (form === 'interval') {
    const seconds = columns.time.subarray(0, columns.length);
    return sinceStart(seconds, 'interval', plan, sample, decisions, account);
  }
  return resolveDates(plan, columns, decisions, account);
};
