import type { NumberProfile } from '../columns/profile.ts';
import type { TimeUnit } from '../../model/options.ts';
import { secondsIn } from '../text/unit-text.ts';
import type { AssumptionId, ReasonId } from '../ids.ts';

/** Seconds since 1970 of the years 1995 to 2100: what a log's own clock can say (chosen). */
const EPOCH_FROM = 788_918_400;
const EPOCH_TO = 4_102_444_800;
const EPOCH_UNITS: readonly TimeUnit[] = ['s', 'ms', 'us', 'ns'];

/** Spreadsheet days (from 1899-12-30) of the same years. */
const SERIAL_FROM = 34_700;
const SERIAL_TO = 73_051;
/** 1970-01-01 as a spreadsheet day. */
export const SERIAL_OF_EPOCH = 25_569;
/** A log's spreadsheet days span no more than this (chosen). */
const MOST_SERIAL_DAYS = 400;

/** The unit in which numbers count from 1970, or null if they are too small or too large for it. */
export const epochUnit = (min: number, max: number): TimeUnit | null =>
  EPOCH_UNITS.find((unit) => {
    const scale = secondsIn(unit);
    return min * scale >= EPOCH_FROM && max * scale <= EPOCH_TO;
  }) ?? null;

export const looksLikeEpoch = ({ min, max }: NumberProfile): boolean =>
  epochUnit(min, max) !== null;

const spansLikeSerial = (min: number, max: number): boolean =>
  min >= SERIAL_FROM && max <= SERIAL_TO && max - min <= MOST_SERIAL_DAYS;

/** Days of a spreadsheet, with the time of day as decimals. */
export const looksLikeSerial = ({ numbers }: { numbers: NumberProfile | null }): boolean =>
  numbers !== null && !numbers.isInteger && spansLikeSerial(numbers.min, numbers.max);

/** What the bare numbers of a time column count. */
export interface NumericTime {
  readonly from: 'epoch' | 'serial' | 'elapsed';
  readonly unit: TimeUnit;
  readonly why: ReasonId;
  readonly certainty: number;
  /** Set where nothing in the file says the unit. */
  readonly assumption: AssumptionId | null;
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
export const unitByCourse = ({ span, riseC }: Course): NumericTime => {
  if (riseC < TELLING_RISE_C || span <= 0) return elapsed('s', 'nothing-decides', 0.4);
  const ranked = (['s', 'min', 'h'] as const)
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
 * the course of the temperatures over them.
 */
export const decideNumericTime = (
  min: number,
  max: number,
  headerUnit: TimeUnit | null,
  course: Course,
): NumericTime => {
  const unit = epochUnit(min, max);
  if (unit !== null) {
    return { from: 'epoch', unit, why: 'within-range', certainty: 0.98, assumption: null };
  }
  if (course.isFractional && headerUnit === null && spansLikeSerial(min, max)) {
    return { from: 'serial', unit: 'd', why: 'within-range', certainty: 0.9, assumption: null };
  }
  if (headerUnit !== null) {
    return { from: 'elapsed', unit: headerUnit, why: 'header', certainty: 0.97, assumption: null };
  }
  return unitByCourse(course);
};
