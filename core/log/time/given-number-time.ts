import type { ReadingDecisions, TimeUnit } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { secondsIn } from '../text/unit-text.ts';
import { SECONDS_PER_DAY } from './civil.ts';
import {
  epochUnit,
  SERIAL_OF_EPOCH,
  unitByCourse,
  type Course,
  type NumericTime,
} from './numeric-time.ts';

/** Days from 1970 to the year 10000, where ISO 8601 dates of four digits end. */
const END_OF_DATES_DAYS = 2_932_897;

const refuse = (why: string): never => {
  throw new Refusal('bad-option', why);
};

const epochIn = (min: number, max: number, unit: TimeUnit | undefined): TimeUnit => {
  const found = unit ?? epochUnit(min, max);
  if (found !== null) return found;
  return refuse(
    `counted from 1970 the times, ${min} to ${max}, fit no unit; say in which unit they count`,
  );
};

/** Refuses days that no calendar of four-digit years has. */
const checkDates = (firstDays: number, lastDays: number, from: string): void => {
  if (firstDays >= 0 && lastDays < END_OF_DATES_DAYS) return;
  refuse(`${from} the times lie outside the years 1970 to 9999`);
};

/**
 * What the person says that the bare numbers of a time column count, completed by `found`, what the
 * file says or shows. Null where nothing was said.
 *
 * @throws Refusal `bad-option` where it does not suit the numbers, `min` to `max`
 */
export const givenNumericTime = (
  { timeUnit, timeFrom }: ReadingDecisions,
  min: number,
  max: number,
  found: NumericTime,
  course: Course,
): NumericTime | null => {
  if (timeUnit === undefined && timeFrom === undefined) return null;
  const isAsFound = timeUnit === undefined || timeUnit === found.unit;
  const from = timeFrom ?? (isAsFound ? found.from : 'elapsed');
  const said = { from, why: 'given', certainty: 1, assumption: null } as const;
  if (from === 'serial') {
    if (timeUnit !== undefined && timeUnit !== 'd')
      refuse('the numbers of a spreadsheet count days');
    checkDates(min - SERIAL_OF_EPOCH, max - SERIAL_OF_EPOCH, 'as days of a spreadsheet');
    return { ...said, unit: 'd' };
  }
  if (from === 'epoch') {
    const unit = epochIn(min, max, timeUnit);
    const days = secondsIn(unit) / SECONDS_PER_DAY;
    checkDates(min * days, max * days, `counted in ${unit} from 1970`);
    return { ...said, unit };
  }
  if (timeUnit !== undefined) return { ...said, unit: timeUnit };
  // Only where they count from is said: their unit is the file's, or what the course suggests.
  return found.from === 'elapsed' ? found : unitByCourse(course);
};

/** Refuses what was said of bare numbers where the times are none. */
export const refuseNumberOptions = (
  { timeUnit, timeFrom }: ReadingDecisions,
  form: string,
): void => {
  if (timeUnit === undefined && timeFrom === undefined) return;
  if (form === 'number') return;
  const what = form === 'interval' ? 'the rows carry no times' : 'the times are dates or clocks';
  refuse(`${what}, not bare numbers; leave open what bare numbers count`);
};
