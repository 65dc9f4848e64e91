import type { NumberProfile } from '../columns/profile.ts';
import type { TimeUnit } from '../../model/options.ts';
import { secondsIn } from '../text/unit-text.ts';
import type { AssumptionId, ReasonId } from '../ids.ts';

/** Seconds since 1970 of the years 1995 to 2100: what a log's own clock can say (chosen). */
const EPOCH_FROM = 788_918_400;
const EPOCH_TO = 4_102_444_800;
const EPOCH_UNITS: readonly TimeUnit[] = ['s', 'ms', 'us', 'ns'];

/** 1970-01-01 as a spreadsheet day (counted from 1899-12-30). */
export const SERIAL_OF_EPOCH = 25_569;
/**
 * 1970-01-01 as a day of other counts: astronomers' Julian date, which begins at noon (Explanatory
 * Supplement to the Astronomical Almanac), and days from the year 0 of the proleptic calendar.
 */
const DAY_COUNTS: readonly number[] = [SERIAL_OF_EPOCH, 2_440_587.5, 719_529];
/** The same in modified Julian dates: like spreadsheet days of later years, so only where named so. */
const MODIFIED_JULIAN_OF_EPOCH = 40_587;
/** Days from 1970 of the years 1995 to 2100. */
const DAYS_FROM = 9131;
const DAYS_TO = 47_482;
/** A log's days span no more than this (chosen). */
const MOST_SERIAL_DAYS = 400;

/** The unit in which numbers count from 1970, or null if they are too small or too large for it. */
export const epochUnit = (min: number, max: number): TimeUnit | null =>
  EPOCH_UNITS.find((unit) => {
    const scale = secondsIn(unit);
    return min * scale >= EPOCH_FROM && max * scale <= EPOCH_TO;
  }) ?? null;

export const looksLikeEpoch = ({ min, max }: NumberProfile): boolean =>
  epochUnit(min, max) !== null;

const isDayFrom = (zero: number, min: number, max: number): boolean =>
  min - zero >= DAYS_FROM && max - zero <= DAYS_TO && max - min <= MOST_SERIAL_DAYS;

/** The day that 1970-01-01 is in the count that numbers are days of, or null for no such count. */
export const dayCountOf = (min: number, max: number, name = ''): number | null =>
  /\bmjd\b|modified julian/i.test(name) && isDayFrom(MODIFIED_JULIAN_OF_EPOCH, min, max)
    ? MODIFIED_JULIAN_OF_EPOCH
    : (DAY_COUNTS.find((zero) => isDayFrom(zero, min, max)) ?? null);

/** Days of a spreadsheet or another count, with the time of day as decimals. */
export const looksLikeSerial = ({ numbers }: { numbers: NumberProfile | null }): boolean =>
  numbers !== null && !numbers.isInteger && dayCountOf(numbers.min, numbers.max) !== null;

/** What the bare numbers of a time column count. */
export interface NumericTime {
  readonly from: 'epoch' | 'serial' | 'elapsed';
  readonly unit: TimeUnit;
  readonly why: ReasonId;
  readonly certainty: number;
  /** Set where nothing in the file says the unit. */
  readonly assumption: AssumptionId | null;
  /** The number of 1970-01-01, for `serial`; that of spreadsheets where it is left out. */
  readonly dayOfEpoch?: number;
}

/** The course of a firing, as far as it helps to tell minutes from hours. */
export interface Course {
  /** Last minus first of the bare times. */
  readonly span: number;
  /** Highest minus lowest temperature, °C. */
  readonly riseC: number;
  readonly isFractional: boolean;
}

/** A kiln's usual mean rate, °C/h, in the middle (by ratio) of what kilns do (common practice). */
const USUAL_C_PER_HOUR = 120;
/** Below this climb the course says nothing of the unit (chosen). */
const TELLING_RISE_C = 150;
/** Rates further from the usual than this ratio are not a kiln's (chosen). */
const LARGEST_RATIO = 60;

const ASSUMED: Readonly<Partial<Record<TimeUnit, AssumptionId>>> = {
  ms: 'milliseconds',
  s: 'seconds',
  min: 'minutes',
  h: 'hours',
  d: 'days',
};

const elapsed = (unit: TimeUnit, why: ReasonId, certainty: number): NumericTime => ({
  from: 'elapsed',
  unit,
  why,
  certainty,
  assumption: ASSUMED[unit] ?? null,
});

/** The unit in which the course climbs most like a kiln. */
export const unitByCourse = ({ span, riseC, isFractional }: Course): NumericTime => {
  if (riseC < TELLING_RISE_C || span <= 0) return elapsed('s', 'nothing-decides', 0.4);
  // Counters of milliseconds are whole; days with a time of day are not.
  const units = ['s', 'min', 'h', isFractional ? 'd' : 'ms'] as const;
  const ranked = units
    .map((unit) => {
      const rate = riseC / ((span * secondsIn(unit)) / 3600);
      return { unit, distance: Math.abs(Math.log(rate / USUAL_C_PER_HOUR)) };
    })
    .sort((one, other) => one.distance - other.distance);
  const [best, next] = ranked;
  if (best === undefined || next === undefined || best.distance > Math.log(LARGEST_RATIO)) {
    return elapsed('s', 'nothing-decides', 0.3);
  }
  const lead = next.distance - best.distance;
  return elapsed(best.unit, 'plausible', Math.min(0.85, 0.4 + lead / 5));
};

/**
 * What the bare numbers of a time column count: by the unit of their header, by their size, or by
 * the course of the temperatures over them. `name` is that of their column.
 */
export const decideNumericTime = (
  min: number,
  max: number,
  headerUnit: TimeUnit | null,
  course: Course,
  name = '',
): NumericTime => {
  const unit = epochUnit(min, max);
  if (unit !== null) {
    return { from: 'epoch', unit, why: 'within-range', certainty: 0.98, assumption: null };
  }
  const dayOfEpoch = course.isFractional ? dayCountOf(min, max, name) : null;
  if (dayOfEpoch !== null && (headerUnit === null || headerUnit === 'd')) {
    const said = { why: 'within-range', certainty: 0.9, assumption: null } as const;
    return { from: 'serial', unit: 'd', ...said, dayOfEpoch };
  }
  if (headerUnit !== null) {
    return { from: 'elapsed', unit: headerUnit, why: 'header', certainty: 0.97, assumption: null };
  }
  return unitByCourse(course);
};
