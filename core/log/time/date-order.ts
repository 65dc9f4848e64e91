import type { ReadingDecisions } from '../../model/options.ts';
import { daysFromCivil, daysInMonth } from './civil.ts';
import type { DatePart, Stamp } from './stamp.ts';

export type DayOrder = NonNullable<ReadingDecisions['dayOrder']>;

/** The year given to dates without one: a leap year, so that 29 February exists. */
export const YEAR_OF_YEARLESS = 2000;

/** Two digits of a year below this are of this century, from it on of the last (as in POSIX). */
const PIVOT_YEAR = 69;

const fullYear = ({ value, digits }: DatePart): number => {
  if (digits === 4) return value;
  if (digits !== 2) return Number.NaN;
  return value < PIVOT_YEAR ? 2000 + value : 1900 + value;
};

const daysOf = (year: number, month: number, day: number): number => {
  const isDay = day >= 1 && day <= daysInMonth(year, month);
  return isDay ? daysFromCivil(year, month, day) : Number.NaN;
};

/** A date with the month as a word: the four-digit or later of the other two is the year. */
const daysOfNamed = (parts: readonly DatePart[]): number => {
  const month = parts.find((part) => part.isName)!;
  const [first, second] = parts.filter((part) => !part.isName);
  if (first === undefined) return Number.NaN;
  if (second === undefined) return daysOf(YEAR_OF_YEARLESS, month.value, first.value);
  const isYearFirst = first.digits === 4 || (first.value > 31 && first.digits === 2);
  const [year, day] = isYearFirst ? [first, second] : [second, first];
  return daysOf(fullYear(year), month.value, day.value);
};

const daysOfYearless = ([first, second]: readonly DatePart[], order: DayOrder): number => {
  if (first === undefined || second === undefined) return Number.NaN;
  const [month, day] = order === 'day-first' ? [second, first] : [first, second];
  return daysOf(YEAR_OF_YEARLESS, month.value, day.value);
};

/** Days from 1970-01-01 to a printed date, or NaN if it is none in that order. */
export const daysOfDate = (parts: readonly DatePart[], order: DayOrder): number => {
  if (parts.some((part) => part.isName)) return daysOfNamed(parts);
  if (parts.length === 2) return daysOfYearless(parts, order);
  const [first, second, third] = parts;
  if (first === undefined || second === undefined || third === undefined) return Number.NaN;
  const isYearFirst = first.digits === 4 || (order === 'year-first' && third.digits !== 4);
  if (isYearFirst) return daysOf(fullYear(first), second.value, third.value);
  const [month, day] = order === 'month-first' ? [first, second] : [second, first];
  return daysOf(fullYear(third), month.value, day.value);
};

/** The orders in which a date can be read at all; one where its form settles it. */
export const ordersOf = ({ date }: Stamp): readonly DayOrder[] => {
  if (date.length === 0 || date.some((part) => part.isName) || date[0]?.digits === 4) {
    return ['year-first'];
  }
  if (date.length === 2 || date[2]?.digits === 4) return ['day-first', 'month-first'];
  return ['day-first', 'month-first', 'year-first'];
};
