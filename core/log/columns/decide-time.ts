import type { Account } from '../account.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { declaredDayOrder, declaredInterval, preambleDates } from '../text/preamble.ts';
import { daysOfDate, type DayOrder } from '../time/date-order.ts';
import { decideDayOrder } from '../time/decide-day-order.ts';
import { isNumberClass } from '../text/cell-class.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { describeStamp } from '../time/describe-stamp.ts';
import { scanStamp, type Stamp } from '../time/stamp.ts';
import { refuseNumberOptions } from '../time/given-number-time.ts';
import { joinedStamp, stampOfParts } from '../time/time-reader.ts';
import { refuseColumn } from './given-roles.ts';
import { findTime, givenTime, type TimeCandidate } from './find-time.ts';
import { speaksOfTime } from './name-meaning.ts';
import { holdsTimes, type ColumnProfile } from './profile.ts';
import { columnNamed, type TableSample } from './sample.ts';
import type { TimePlan } from './time-plan.ts';

/** Where the time is, before it is known in which order its dates are written. */
export type TimePlace =
  | TimeCandidate
  | { readonly form: 'interval'; readonly seconds: number; readonly columns: readonly [] };

const givenPlace = (sample: TableSample, wanted: readonly string[]): TimeCandidate => {
  const columns = wanted.map((name) => {
    const column = columnNamed(sample, name);
    if (column !== null) return column;
    return refuseColumn(sample, name);
  });
  const place = givenTime(sample, columns);
  if (place !== null) return place;
  throw new Refusal('bad-option', `no times can be read in ${quotedNames(wanted)}`);
};

/** A column of times, by its form or its name, that says the same in every row. */
const stoppedClock = ({ profiles, names, isNamed }: TableSample): ColumnProfile | undefined => {
  const stopped = profiles.filter((profile) => {
    const isNamedTime = isNamed && speaksOfTime(names[profile.column] ?? '');
    const isNumber = profile.numbers !== null && isNamedTime;
    return profile.distinct === 1 && profile.filled === 1 && (holdsTimes(profile) || isNumber);
  });
  return stopped.find(({ kind }) => kind !== 'date') ?? stopped[0];
};

const refuseStopped = (sample: TableSample, { column, kind }: ColumnProfile): never => {
  const always = `“${sample.rows[0]?.[column] ?? ''}” on every row`;
  const what = kind === 'date' ? 'only a date was found, and' : 'the times never move:';
  throw new Refusal(
    'no-time',
    `${what} “${sample.names[column]}” says ${always}; give the seconds between readings if they ` +
      'came at a steady interval',
    sample.line,
  );
};

const refuseWithoutTime = (sample: TableSample): never => {
  const stopped = stoppedClock(sample);
  if (stopped !== undefined && sample.rows.length > 1) return refuseStopped(sample, stopped);
  const columns = sample.isNamed ? ` among the columns ${quotedNames(sample.names)}` : '';
  throw new Refusal(
    'no-time',
    `no column of times was found${columns}; name the time column, or give the seconds between ` +
      'readings if they came at a steady interval',
    sample.line,
  );
};

/** A single column of numbers is what was measured, unless its name speaks of time. */
const isAlone = ({ profiles, names }: TableSample): boolean =>
  profiles.length === 1 && isNumberClass(profiles[0]!.kind) && !speaksOfTime(names[0] ?? '');

/**
 * Finds the time of the rows: where the person says, in a column, or as an interval between rows.
 *
 * @throws Refusal `no-time` if there is none, `bad-option` if the person's columns hold none.
 */
export const placeTime = (
  sample: TableSample,
  decisions: ReadingDecisions,
  account: Account,
): TimePlace => {
  const { timeColumns, intervalSeconds } = decisions;
  if (timeColumns !== undefined && timeColumns.length > 0) {
    const place = givenPlace(sample, timeColumns);
    accountForColumns(sample, place, 'given', 1, account);
    return place;
  }
  if (intervalSeconds !== undefined) {
    account.decide('interval', `${intervalSeconds} s`, 'given', 1);
    return { form: 'interval', seconds: intervalSeconds, columns: [] };
  }
  const [best, next] = isAlone(sample) ? [] : findTime(sample);
  if (best !== undefined) {
    const isNamed = best.columns.every((column) => speaksOfTime(sample.names[column] ?? 'time'));
    const isClear = best.score >= 70 && (next === undefined || next.score < best.score);
    const why = sample.isNamed && isNamed ? 'name' : next === undefined ? 'only-one' : 'behaviour';
    accountForColumns(sample, best, why, isClear ? 0.95 : 0.6, account);
    return best;
  }
  const interval = declaredInterval(sample.preamble);
  if (interval === null) return refuseWithoutTime(sample);
  account.decide('interval', `${interval} s`, 'preamble', 0.8);
  account.warn('interval-assumed');
  account.assume('interval');
  return { form: 'interval', seconds: interval, columns: [] };
};

const accountForColumns = (
  sample: TableSample,
  place: TimeCandidate,
  why: 'given' | 'name' | 'only-one' | 'behaviour',
  certainty: number,
  account: Account,
): void => {
  const present = place.columns.filter((column) => column >= 0);
  const names = present.map((column) => sample.names[column] ?? '');
  account.decide('time-column', names.join(' + '), why, certainty);
};

/** The stamps of the sampled rows. */
const stampsOf = (sample: TableSample, place: TimeCandidate): Stamp[] =>
  sample.rows
    .map((row) => {
      const [first = 0, second] = place.columns;
      if (place.form === 'parts') return stampOfParts(place.columns.map((column) => row[column]));
      return second === undefined ? row[first] : joinedStamp(row[first], row[second]);
    })
    .map((text) => scanStamp(text ?? ''))
    .filter((stamp) => stamp !== null)
    .filter((stamp) => stamp.date.length > 0);

export interface DateContext {
  readonly isFahrenheit: boolean;
  readonly isContinental: boolean;
}

/** Decides the order of day and month, and accounts for it where there was a choice. */
export const decideOrder = (
  stamps: readonly Stamp[],
  sample: TableSample,
  timeNames: readonly string[],
  context: DateContext,
  decisions: ReadingDecisions,
  account: Account,
): DayOrder => {
  if (decisions.dayOrder !== undefined) {
    account.decide('day-order', decisions.dayOrder, 'given', 1);
    return decisions.dayOrder;
  }
  const decision = decideDayOrder(stamps, {
    ...context,
    preamble: preambleDates(sample.preamble),
    declared: declaredDayOrder([...timeNames, ...sample.preamble.lines]),
  });
  if (decision === null) return 'year-first';
  account.decide('day-order', decision.order, decision.why, decision.certainty);
  if (decision.isAssumed) {
    account.assume(decision.order);
    account.warn('day-order-assumed');
  }
  return decision.order;
};

/** A time plan and the day from which its times are counted. */
export interface DatedPlan {
  readonly time: TimePlan;
  readonly originDays: number;
}

const dated = (
  sample: TableSample,
  place: TimeCandidate,
  context: DateContext,
  decisions: ReadingDecisions,
  account: Account,
): DatedPlan => {
  const stamps = stampsOf(sample, place);
  const names = place.columns.map((column) => sample.names[column] ?? '');
  const order = decideOrder(stamps, sample, names, context, decisions, account);
  const first = stamps.find((stamp) => !Number.isNaN(daysOfDate(stamp.date, order)));
  const originDays = first === undefined ? 0 : daysOfDate(first.date, order);
  const [column = 0, clockColumn = 0] = place.columns;
  const pattern = first === undefined ? place.form : describeStamp(first, order);
  account.decide('time-pattern', pattern, 'rows-agree', 0.95);
  if (first?.date.length === 2) account.assume('no-year');
  if (place.form === 'parts') {
    return { time: { form: 'parts', columns: place.columns, order: 'year-first' }, originDays };
  }
  const time: TimePlan =
    place.form === 'date-and-clock'
      ? { form: 'date-and-clock', column, clockColumn, order }
      : { form: 'stamp', column, order };
  return { time, originDays };
};

/** Completes the place of the time with the order of its dates. */
export const planTime = (
  sample: TableSample,
  place: TimePlace,
  context: DateContext,
  decisions: ReadingDecisions,
  account: Account,
): DatedPlan => {
  refuseNumberOptions(decisions, place.form);
  if (place.form === 'interval') {
    account.decide('time-pattern', 'interval', 'rows-agree', 0.9);
    return { time: { form: 'interval', seconds: place.seconds }, originDays: 0 };
  }
  const [column = 0] = place.columns;
  if (place.form === 'number') return { time: { form: 'number', column }, originDays: 0 };
  if (place.form === 'clock-parts') {
    return { time: { form: 'clock-parts', columns: place.columns }, originDays: 0 };
  }
  if (place.form === 'clock') return { time: { form: 'clock', column }, originDays: 0 };
  return dated(sample, place, context, decisions, account);
};
