import type { TimePlan } from '../columns/time-plan.ts';
import { parseNumber, type DecimalMark } from '../text/number.ts';
import { civilFromDays, SECONDS_PER_DAY } from './civil.ts';
import { daysOfDate } from './date-order.ts';
import { isDottedClock } from './dotted-clock.ts';
import { parseDuration } from './duration.ts';
import { SERIAL_OF_EPOCH } from './numeric-time.ts';
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

  constructor(plan: TimePlan, originDays: number, mark: DecimalMark) {
    this.#plan = plan;
    this.#originDays = originDays;
    this.#mark = mark;
  }

  /**
   * Seconds from the plan's first day for dates, seconds of the clock for clocks, and the bare
   * number for numbers; NaN if the cells hold no such thing. `row` counts the rows before this one.
   */
  read(cells: readonly string[], row: number): number {
    const plan = this.#plan;
    if (plan.form === 'stamp') return this.stampSeconds(cells[plan.column] ?? '');
    if (plan.form === 'date-and-clock') {
      return this.stampSeconds(joinedStamp(cells[plan.column], cells[plan.clockColumn]));
    }
    if (plan.form === 'parts') {
      return this.stampSeconds(stampOfParts(plan.columns.map((column) => cells[column])));
    }
    if (plan.form === 'clock-parts') {
      return clockSeconds(clockOfParts(plan.columns.map((column) => cells[column])));
    }
    if (plan.form === 'clock') return clockSeconds(cells[plan.column] ?? '');
    if (plan.form === 'number') return parseNumber(cells[plan.column] ?? '', this.#mark);
    if (plan.form === 'section') return this.sectionSeconds;
    return row * plan.seconds;
  }

  /** Whether the cells of the time are all empty. */
  isEmpty(cells: readonly string[]): boolean {
    const plan = this.#plan;
    if (plan.form === 'interval' || plan.form === 'section') return false;
    if (plan.form === 'parts' || plan.form === 'clock-parts') {
      return plan.columns.every((column) => (cells[column] ?? '') === '');
    }
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

/** Year, month, day, hour, minute and second from columns of their own; the last two may lack. */
export const stampOfParts = (parts: readonly (string | undefined)[]): string => {
  const [year = '', month = '', day = '', hour = '', minute = '', second = ''] = parts;
  if (year === '' || month === '' || day === '' || hour === '') return '';
  return `${year.padStart(4, '20')}-${month}-${day} ${hour}:${minute || '0'}:${second || '0'}`;
};

/** Hours, minutes and seconds as one clock; a part that is empty stands for 0. */
const clockOfParts = (parts: readonly (string | undefined)[]): string => {
  const [hours = '', minutes = '', seconds = ''] = parts;
  if (hours === '' && minutes === '') return '';
  return `${hours || '0'}:${minutes.padStart(2, '0')}:${seconds.padStart(2, '0')}`;
};

/** A spreadsheet's day, and the share of a day that its clock is as a number. */
const SERIAL_DATE = /^[3-7]\d{4}$/;
const DAY_SHARE = /^[01]?[.,]\d{1,16}$|^[01]$/;

const serialDate = (serial: string): string => {
  const { year, month, day } = civilFromDays(Number(serial) - SERIAL_OF_EPOCH);
  return `${year}-${month}-${day}`;
};

const clockOfShare = (share: string): string => {
  const seconds = Math.round(Number(share.replace(',', '.')) * SECONDS_PER_DAY);
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return `${hours}:${String(minutes).padStart(2, '0')}:${String(seconds % 60).padStart(2, '0')}`;
};

/**
 * Date and clock as one text; a clock of bare digits gets its leading zeros back, and the numbers
 * of a spreadsheet become date and clock.
 */
export const joinedStamp = (date = '', clock = ''): string => {
  if (date === '' || clock === '') return '';
  if (SERIAL_DATE.test(date)) {
    const time = DAY_SHARE.test(clock) ? clockOfShare(clock) : clock;
    return joinedStamp(serialDate(date), time);
  }
  if (/^\d{1,6}$/.test(clock)) return `${date} ${clock.padStart(clock.length > 4 ? 6 : 4, '0')}`;
  return `${date} ${isDottedClock(clock) ? clock.replaceAll('.', ':') : clock}`;
};

/** Seconds of a clock, or of a time elapsed that is written like one or in words. */
export const clockSeconds = (cell: string): number => {
  if (isDottedClock(cell)) return clockSeconds(cell.replaceAll('.', ':'));
  const stamp = scanStamp(cell);
  if (stamp?.clockSeconds == null || stamp.date.length > 0) return parseDuration(cell);
  return stamp.clockSeconds + stamp.fraction;
};
