import { civilFromDays, daysFromCivil } from './civil.ts';

/** `DT#2024-03-14-06:30:00`, `TOD#06:30:00`: literals of IEC 61131-3, as controllers print them. */
const LITERAL = /^(?:l?dt|l?tod|date_and_time|time_of_day|ltod|d)#/i;
/** ISO 8601 week dates, `2024-W11-4` or `2024W114`, and what follows them. */
const WEEK_DATE = /^(\d{4})-?W(\d{2})-?([1-7])(?=$|[T ])(.*)$/i;
/** ISO 8601 ordinal dates, `2024-074`; without the hyphen only before a time of day. */
const ORDINAL_DATE = /^(\d{4})(?:-(\d{3})(?=$|[T ])|(\d{3})(?=[T ]\d))(.*)$/;
/** A whole date and a clock with other marks than colons: `2024-03-14_06-30-00`, `… 06.30`. */
const MARKED_CLOCK =
  /^(\d{4}[-./]\d{1,2}[-./]\d{1,2}|\d{1,2}[-./]\d{1,2}[-./]\d{4}|\d{1,2}\.\d{1,2}\.\d{2})[ _T]{1,2}(\d{1,2})([-.])(\d{2})(?:\3(\d{2}))?$/;
/** `13.30 Uhr`. */
const DOTTED_WITH_WORD = /^(\d{1,2})\.(\d{2})(?:\.(\d{2}))?\s?(?:uhr|h|hrs|uur)$/i;
/** Signs that stand for year, month, day, hour, minute and second in Chinese and Japanese dates. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[年月]/g, '-'],
  [/日/g, ' '],
  [/[時时點点分](?=\d)/g, ':'],
  [/[時时點点]/g, ':00'],
  [/[分秒]/g, ''],
  [/上午|午前/g, ' am '],
  [/下午|午後/g, ' pm '],
];

const two = (value: number): string => String(value).padStart(2, '0');

const dateText = (days: number): string => {
  const { year, month, day } = civilFromDays(days);
  return `${year}-${two(month)}-${two(day)}`;
};

/** The date of a day of an ISO 8601 week: week 1 holds 4 January, and weeks begin on Monday. */
const ofWeek = (year: number, week: number, weekday: number): string | null => {
  const fourth = daysFromCivil(year, 1, 4);
  // 1970-01-01 was a Thursday.
  const monday = fourth - ((((fourth + 3) % 7) + 7) % 7);
  return week >= 1 && week <= 53 ? dateText(monday + 7 * (week - 1) + weekday - 1) : null;
};

const ofOrdinal = (year: number, day: number): string | null => {
  const first = daysFromCivil(year, 1, 1);
  return day >= 1 && day <= daysFromCivil(year + 1, 1, 1) - first
    ? dateText(first + day - 1)
    : null;
};

/** Which calendar a stamp's date is written in: of months, of weeks or of days of the year. */
export type DateForm = 'months' | 'weeks' | 'ordinal';

export interface UsualForm {
  readonly text: string;
  readonly dateForm: DateForm;
}

const inMonths = (text: string): UsualForm => ({ text, dateForm: 'months' });

const ofOtherCalendar = (text: string): UsualForm | null => {
  const week = WEEK_DATE.exec(text);
  if (week !== null) {
    const date = ofWeek(Number(week[1]), Number(week[2]), Number(week[3]));
    return date === null ? null : { text: `${date}${week[4]}`, dateForm: 'weeks' };
  }
  const ordinal = ORDINAL_DATE.exec(text);
  if (ordinal === null) return null;
  const date = ofOrdinal(Number(ordinal[1]), Number(ordinal[2] ?? ordinal[3]));
  return date === null ? null : { text: `${date}${ordinal[4]}`, dateForm: 'ordinal' };
};

/**
 * A stamp of a rarer form in the usual one: week and ordinal dates of ISO 8601, literals of
 * controllers, clocks with other marks than colons, signs for year and hour. Null for any other text.
 */
export const usualForm = (text: string): UsualForm | null => {
  const other = ofOtherCalendar(text);
  if (other !== null) return other;
  if (LITERAL.test(text)) {
    const bare = text.replace(LITERAL, '');
    return inMonths(bare.replace(/^(\d{4}-\d{1,2}-\d{1,2})-(?=\d)/, '$1 '));
  }
  const marked = MARKED_CLOCK.exec(text);
  if (marked !== null) {
    const [, date = '', hour = '', , minute = '', second] = marked;
    return inMonths(`${date} ${hour}:${minute}${second === undefined ? '' : `:${second}`}`);
  }
  const dotted = DOTTED_WITH_WORD.exec(text);
  if (dotted !== null) return inMonths([dotted[1], dotted[2], dotted[3] ?? '00'].join(':'));
  if (!/[年月日時时點点分秒午]/.test(text)) return null;
  return inMonths(SIGNS.reduce((rest, [sign, mark]) => rest.replace(sign, mark), text).trim());
};
