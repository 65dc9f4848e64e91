/**
 * Days and dates of the proleptic Gregorian calendar, after H. Hinnant, "chrono-compatible
 * low-level date algorithms" (days_from_civil, civil_from_days).
 */
export const SECONDS_PER_DAY = 86_400;

const DAYS_PER_ERA = 146_097;
const DAYS_TO_EPOCH = 719_468;

/** Days from 1970-01-01 to a date; the month is 1–12 and the parts are taken as valid. */
export const daysFromCivil = (year: number, month: number, day: number): number => {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_ERA + dayOfEra - DAYS_TO_EPOCH;
};

export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** The date a number of days after 1970-01-01. */
export const civilFromDays = (days: number): CivilDate => {
  const shifted = days + DAYS_TO_EPOCH;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
};

const isLeapYear = (year: number): boolean =>
  (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** The number of days of a month (1–12), or 0 for a month that does not exist. */
export const daysInMonth = (year: number, month: number): number => {
  if (month === 2 && isLeapYear(year)) return 29;
  return DAYS_IN_MONTH[month - 1] ?? 0;
};

const padded = (value: number, width: number): string => String(value).padStart(width, '0');

/**
 * An instant as ISO 8601: `days` after 1970-01-01 and `seconds` into that day (which may be beyond
 * it), decimals to the microsecond where there are any, and the offset in minutes where known.
 */
export const isoInstant = (days: number, seconds: number, offsetMinutes: number | null): string => {
  const micros = Math.round(seconds * 1e6);
  const wholeSeconds = Math.floor(micros / 1e6);
  const fraction = micros - wholeSeconds * 1e6;
  const extraDays = Math.floor(wholeSeconds / SECONDS_PER_DAY);
  const ofDay = wholeSeconds - extraDays * SECONDS_PER_DAY;
  const { year, month, day } = civilFromDays(days + extraDays);
  const date = `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
  const clock = [Math.floor(ofDay / 3600), Math.floor(ofDay / 60) % 60, ofDay % 60];
  const decimals = fraction === 0 ? '' : `.${padded(fraction, 6).replace(/0+$/, '')}`;
  return `${date}T${clock.map((part) => padded(part, 2)).join(':')}${decimals}${zone(offsetMinutes)}`;
};

const zone = (offsetMinutes: number | null): string => {
  if (offsetMinutes === null) return '';
  if (offsetMinutes === 0) return 'Z';
  const size = Math.abs(offsetMinutes);
  const sign = offsetMinutes < 0 ? '-' : '+';
  return `${sign}${padded(Math.floor(size / 60), 2)}:${padded(size % 60, 2)}`;
};

const WRITTEN =
  /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2}):(\d{2}(?:\.\d{1,9})?)(Z|([+-])(\d{2}):(\d{2}))?$/;

interface Written {
  readonly days: number;
  readonly secondsOfDay: number;
  readonly offsetMinutes: number | null;
}

const writtenInstant = (instant: string): Written => {
  const parts = WRITTEN.exec(instant);
  if (parts === null) throw new Error(`not an instant: ${instant}`);
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map(Number);
  const [, , , , , , , zoneText, sign, zoneHours, zoneMinutes] = parts;
  const size = Number(zoneHours ?? 0) * 60 + Number(zoneMinutes ?? 0);
  return {
    days: daysFromCivil(year!, month!, day!),
    secondsOfDay: hour! * 3600 + minute! * 60 + second!,
    offsetMinutes: zoneText === undefined ? null : sign === '-' ? -size : size,
  };
};

/** An instant as {@link isoInstant} writes it, moved by some seconds on the same offset. */
export const movedInstant = (instant: string, bySeconds: number): string => {
  const { days, secondsOfDay, offsetMinutes } = writtenInstant(instant);
  return isoInstant(days, secondsOfDay + bySeconds, offsetMinutes);
};

/**
 * Seconds from one instant to another, as {@link isoInstant} writes them; null where only one of
 * them says its offset, so that hours may lie between their clocks.
 */
export const secondsBetween = (from: string, to: string): number | null => {
  const [first, second] = [writtenInstant(from), writtenInstant(to)];
  if ((first.offsetMinutes === null) !== (second.offsetMinutes === null)) return null;
  const onOneClock = ({ days, secondsOfDay, offsetMinutes }: Written): number =>
    days * SECONDS_PER_DAY + secondsOfDay - (offsetMinutes ?? 0) * 60;
  return onOneClock(second) - onOneClock(first);
};
