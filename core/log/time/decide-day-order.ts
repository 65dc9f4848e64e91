import type { ReasonId } from '../ids.ts';
import { SECONDS_PER_DAY } from './civil.ts';
import { daysOfDate, ordersOf, type DayOrder } from './date-order.ts';
import type { Stamp } from './stamp.ts';

/** What else in the file speaks for one order. */
export interface DayOrderHints {
  /** Dates that stand above the table. */
  readonly preamble: readonly Stamp[];
  /** A pattern written out in the header or above it, such as `DD/MM/YYYY`. */
  readonly declared: DayOrder | null;
  readonly isFahrenheit: boolean;
  /** Decimal comma or semicolons between cells: habits of countries that write the day first. */
  readonly isContinental: boolean;
}

export interface DayOrderDecision {
  readonly order: DayOrder;
  readonly why: ReasonId;
  readonly certainty: number;
  /** Whether nothing but habit speaks for it. */
  readonly isAssumed: boolean;
}

/** An order must read this share of the dates; the rest may be damaged (chosen). */
const READS_NEARLY_ALL = 0.97;
/** The true order's steps add up to less than this share of the other's (chosen). */
const MUCH_STEADIER = 0.2;

const decided = (order: DayOrder, why: ReasonId, certainty: number): DayOrderDecision => ({
  order,
  why,
  certainty,
  isAssumed: false,
});

const secondsIn = (stamps: readonly Stamp[], order: DayOrder): number[] =>
  stamps.map(
    (stamp) => daysOfDate(stamp.date, order) * SECONDS_PER_DAY + (stamp.clockSeconds ?? 0),
  );

const shareRead = (seconds: readonly number[]): number =>
  seconds.filter((value) => !Number.isNaN(value)).length / Math.max(1, seconds.length);

const totalOfSteps = (seconds: readonly number[]): number => {
  const read = seconds.filter((value) => !Number.isNaN(value));
  return read.slice(1).reduce((sum, value, index) => sum + Math.abs(value - read[index]!), 0);
};

/** The one order among `orders` that can read `stamps`, or null if several (or none) can. */
const onlyReadable = (stamps: readonly Stamp[], orders: readonly DayOrder[]): DayOrder | null => {
  const able = orders.filter((order) => shareRead(secondsIn(stamps, order)) >= READS_NEARLY_ALL);
  return able.length === 1 ? able[0]! : null;
};

const bySteps = (stamps: readonly Stamp[], orders: readonly DayOrder[]): DayOrder | null => {
  const ranked = orders
    .map((order) => ({ order, total: totalOfSteps(secondsIn(stamps, order)) }))
    .sort((one, other) => one.total - other.total);
  const [best, next] = ranked;
  if (best === undefined || next === undefined) return null;
  return best.total < MUCH_STEADIER * next.total ? best.order : null;
};

const byHabit = (
  stamps: readonly Stamp[],
  orders: readonly DayOrder[],
  hints: DayOrderHints,
): DayOrderDecision => {
  const assumed = (order: DayOrder, why: ReasonId, certainty: number): DayOrderDecision => ({
    order,
    why,
    certainty,
    isAssumed: true,
  });
  const mark = stamps[0]?.dateMark;
  if (mark === '.') return { ...decided('day-first', 'usual-for-mark', 0.9), isAssumed: false };
  if (hints.isContinental) return assumed('day-first', 'usual-for-mark', 0.7);
  const isTwelveHour = stamps.some((stamp) => stamp.half !== null);
  if (isTwelveHour || hints.isFahrenheit) return assumed('month-first', 'usual-for-clock', 0.6);
  const days = new Set(stamps.map((stamp) => daysOfDate(stamp.date, orders[0]!)));
  if (days.size <= 1) return assumed('day-first', 'single-day', 0.55);
  return assumed('day-first', 'nothing-decides', 0.3);
};

/**
 * Whether the day or the month is written first, decided by the dates of the whole column: by what
 * can be read at all, by what the file declares, by which order lets the clock run steadily, by the
 * dates above the table, and only then by habit. Null where the form of the dates settles it.
 */
export const decideDayOrder = (
  stamps: readonly Stamp[],
  hints: DayOrderHints,
): DayOrderDecision | null => {
  const numeric = stamps.filter((stamp) => ordersOf(stamp).length > 1);
  const first = numeric[0];
  if (first === undefined || numeric.length < stamps.length / 2) return null;
  const possible = ordersOf(first);
  const only = onlyReadable(numeric, possible);
  if (only !== null) return decided(only, 'part-over-twelve', 0.98);
  const orders = possible.filter(
    (order) => shareRead(secondsIn(numeric, order)) >= READS_NEARLY_ALL,
  );
  const open = orders.length > 0 ? orders : possible;
  if (hints.declared !== null && open.includes(hints.declared)) {
    return decided(hints.declared, 'declared', 0.97);
  }
  const distinct = new Set(open.map((order) => secondsIn(numeric, order).join()));
  if (distinct.size === 1) return decided(open[0]!, 'rows-agree', 0.97);
  const steady = bySteps(numeric, open);
  if (steady !== null) return decided(steady, 'steady-steps', 0.93);
  const alike = hints.preamble.filter((stamp) => stamp.dateMark === first.dateMark);
  const fromPreamble = alike.length > 0 ? onlyReadable(alike, open) : null;
  if (fromPreamble !== null) return decided(fromPreamble, 'preamble', 0.9);
  return byHabit(numeric, open, hints);
};
