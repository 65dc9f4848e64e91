import type { TimePlan } from '../columns/time-plan.ts';
import { parseNumber, type DecimalMark } from '../text/number.ts';
import { parseQuantity } from '../text/quantity.ts';
import { SECONDS_PER_DAY } from './civil.ts';
import { daysOfDate } from './date-order.ts';
import { parseDuration } from './duration.ts';
import { scanStamp, type Stamp } from './stamp.ts';

const LAST_SECOND_OF_DAY = SECONDS_PER_DAY;

/** Reads the time of a row from its cells, with the meaning that a {@link TimePlan} gives them. */
export class TimeReader {
  /** The offset of the last stamp that was read, in minutes; null without one. */
  offsetMinutes: number | null = null;
  /** Where the time of rows comes from the head of their section. */
  sectionSeconds = Number.NaN;
  readonly #plan: TimePlan;
  readonly #originDays: number;
  readonly #mark: DecimalMark;
  #rows = 0;

  constructor(plan: TimePlan, originDays: number, mark: DecimalMark) {
    this.#plan = plan;
    this.#originDays = originDays;
    this.#mark = mark;
  }

  /**
   * Seconds from the plan's first day for dates, seconds of the clock for clocks, and the bare
   * number for numbers; NaN if the cells hold no such thing.
   */
  read(cells: readonly string[]): number {
    const plan = this.#plan;
    if (plan.form === 'stamp') return this.stampSeconds(cells[plan.column] ?? '');
    if (plan.form === 'date-and-clock') {
      return this.stampSeconds(joinedStamp(cells[plan.column], cells[plan.clockColumn]));
    }
    if (plan.form === 'clock') return clockSeconds(cells[plan.column] ?? '');
    if (plan.form === 'number') return bareNumber(cells[plan.column] ?? '', this.#mark);
    if (plan.form === 'section') return this.sectionSeconds;
    this.#rows += 1;
    return (this.#rows - 1) * plan.seconds;
  }

  /** Whether the cells of the time are all empty. */
  isEmpty(cells: readonly string[]): boolean {
    const plan = this.#plan;
    if (plan.form === 'interval' || plan.form === 'section') return false;
    const hasClock = plan.form === 'date-and-clock' && (cells[plan.clockColumn] ?? '') !== '';
    return (cells[plan.column] ?? '') === '' && !hasClock;
  }

  /** Seconds of a whole stamp from the plan's first day, NaN if it is none. */
  stampSeconds(text: string): number {
    const stamp = scanStamp(text);
    if (stamp === null || stamp.date.length === 0) return Number.NaN;
    return this.#secondsOf(stamp);
  }

  #secondsOf(stamp: Stamp): number {
    const order = 'order' in this.#plan ? this.#plan.order : 'year-first';
    const days = daysOfDate(stamp.date, order) - this.#originDays;
    const ofDay = stamp.clockSeconds ?? 0;
    if (ofDay > LAST_SECOND_OF_DAY) return Number.NaN;
    this.offsetMinutes = stamp.offsetMinutes;
    const shift = (stamp.offsetMinutes ?? 0) * 60;
    return days * SECONDS_PER_DAY + ofDay - shift + stamp.fraction;
  }
}

/** Date and clock as one text; a clock of bare digits gets its leading zeros back. */
export const joinedStamp = (date = '', clock = ''): string => {
  const isBare = /^\d{1,6}$/.test(clock);
  if (date === '' || clock === '') return '';
  return `${date} ${isBare ? clock.padStart(clock.length > 4 ? 6 : 4, '0') : clock}`;
};

/** Seconds of a clock, or of a time elapsed that is written like one or in words. */
export const clockSeconds = (cell: string): number => {
  const stamp = scanStamp(cell);
  if (stamp?.clockSeconds == null || stamp.date.length > 0) return parseDuration(cell);
  return stamp.clockSeconds + stamp.fraction;
};

const bareNumber = (cell: string, mark: DecimalMark): number => {
  const value = parseNumber(cell, mark);
  return Number.isNaN(value) ? (parseQuantity(cell, mark)?.value ?? Number.NaN) : value;
};
