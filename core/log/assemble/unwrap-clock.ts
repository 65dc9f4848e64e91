import type { AssumptionId } from '../ids.ts';
import { SECONDS_PER_DAY } from '../time/civil.ts';

const HALF_DAY = SECONDS_PER_DAY / 2;
/** Where readings usually come less often than this, someone wrote them down by hand (chosen). */
const BY_HAND_SECONDS = 20 * 60;
/** A step across noon on a clock of twelve hours is no longer than so many usual ones (chosen). */
const USUAL_STEPS = 10;
const FIRST_HOUR = 3600;
const AFTER_TWELVE = 13 * 3600;

export interface Unwrapped {
  readonly seconds: Float64Array;
  readonly assumption: AssumptionId | null;
}

const usualStep = (clock: Float64Array): number => {
  const steps: number[] = [];
  let last = Number.NaN;
  for (const seconds of clock) {
    if (seconds > last) steps.push(seconds - last);
    if (!Number.isNaN(seconds)) last = seconds;
  }
  steps.sort((one, other) => one - other);
  return steps[steps.length >> 1] ?? 0;
};

const hasFalls = (clock: Float64Array): boolean => {
  let last = -Infinity;
  for (const seconds of clock) {
    if (seconds < last) return true;
    if (!Number.isNaN(seconds)) last = seconds;
  }
  return false;
};

/** How much to add where a clock falls back: a day, half a day, or nothing for a clock set back. */
const lapOf = (fall: number, isTwelveHour: boolean, usual: number): number => {
  if (isTwelveHour) {
    const step = HALF_DAY - fall;
    if (step >= 0 && step <= Math.max(USUAL_STEPS * usual, 3600)) return HALF_DAY;
  }
  return fall > HALF_DAY || usual >= BY_HAND_SECONDS ? SECONDS_PER_DAY : 0;
};

/**
 * Times of day as seconds that run on across midnight, however often the log crosses it. A fall of
 * more than half a day is a midnight; a smaller one is a clock set back, unless the readings are so
 * far apart that nobody resets clocks between them. NaN stays NaN.
 */
export const unwrapClock = (clock: Float64Array, hasHalfMarks: boolean): Unwrapped => {
  const known = clock.filter((seconds) => !Number.isNaN(seconds));
  if (!hasFalls(clock)) return { seconds: clock, assumption: null };
  const min = known.reduce((least, seconds) => Math.min(least, seconds), Infinity);
  const max = known.reduce((most, seconds) => Math.max(most, seconds), -Infinity);
  if (max > SECONDS_PER_DAY) return { seconds: clock, assumption: null };
  const isTwelveHour = !hasHalfMarks && min >= FIRST_HOUR && max < AFTER_TWELVE;
  const usual = usualStep(clock);
  let assumption: AssumptionId | null = null;
  let added = 0;
  let last = -Infinity;
  const seconds = clock.map((value) => {
    if (Number.isNaN(value)) return value;
    if (value < last) {
      const lap = lapOf(last - value, isTwelveHour, usual);
      if (lap > 0) assumption = lap === HALF_DAY ? 'twelve-hour-clock' : 'day-after-midnight';
      added += lap;
    }
    last = value;
    return value + added;
  });
  return { seconds, assumption };
};
