import type { Trace } from '../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import { lowerBound } from '../numeric/search.ts';
import { mean } from '../numeric/statistics.ts';

/** The readings themselves: smoothing rounds off the ends of a hold by minutes. */
type Course = Pick<Trace, 'atSeconds' | 'celsius'>;

/** The first reading, from `here` forwards or backwards, that is off the level by more; null if none. */
const leavesAt = (
  { celsius }: Course,
  here: number,
  step: 1 | -1,
  levelC: number,
  withinC: number,
): number | null => {
  let i = here;
  while (i >= 0 && i < celsius.length && Math.abs(celsius[i]! - levelC) <= withinC) i += step;
  return i < 0 || i >= celsius.length ? null : i;
};

/** When the straight line through readings crosses a level; NaN where they stand still. */
const crossesAtSeconds = (
  { atSeconds, celsius }: Course,
  from: number,
  to: number,
  levelC: number,
): number => {
  const meanSeconds = mean(atSeconds.subarray(from, to + 1));
  const meanC = mean(celsius.subarray(from, to + 1));
  let product = 0;
  let square = 0;
  for (let i = from; i <= to; i++) {
    product += (atSeconds[i]! - meanSeconds) * (celsius[i]! - meanC);
    square += (atSeconds[i]! - meanSeconds) ** 2;
  }
  return meanSeconds + ((levelC - meanC) * square) / product;
};

/**
 * The ends are read this many tolerances off the level, where the course is straight again. Chosen
 * by trial on holds under 20 min of the test kilns.
 */
const NEAR_TOLERANCES = 2;
const FAR_TOLERANCES = 5;

/**
 * How long the record stood at a level around one moment, in minutes; null if it was not within
 * `toleranceC` of the level then.
 *
 * A climb that arrives at 60 °C/h is within 3 °C of its target three minutes early, and a kiln creeps
 * to its level. So each end is carried on to the level in a straight line through the readings where
 * the record was clearly off it.
 */
export const minutesAtLevel = (
  course: Course,
  momentSeconds: number,
  levelC: number,
  toleranceC: number,
): number | null => {
  const { atSeconds, celsius } = course;
  if (atSeconds.length === 0) return null;
  const here = Math.min(lowerBound(atSeconds, momentSeconds), atSeconds.length - 1);
  if (Math.abs(celsius[here]! - levelC) > toleranceC) return null;
  const endSeconds = (step: 1 | -1): number => {
    const last = step === 1 ? atSeconds.length - 1 : 0;
    const near = leavesAt(course, here, step, levelC, NEAR_TOLERANCES * toleranceC);
    if (near === null) return atSeconds[last]!;
    const far = leavesAt(course, near, step, levelC, FAR_TOLERANCES * toleranceC) ?? last;
    // A leap from the one to the other in one reading began at the reading before.
    const begun = far === near ? near - step : near;
    const crosses = crossesAtSeconds(course, Math.min(begun, far), Math.max(begun, far), levelC);
    const end = Number.isFinite(crosses) ? crosses : atSeconds[near]!;
    const between = step === 1 ? Math.min(end, atSeconds[near]!) : Math.max(end, atSeconds[near]!);
    return step * Math.max(step * between, step * atSeconds[here]!);
  };
  return (endSeconds(1) - endSeconds(-1)) / SECONDS_PER_MINUTE;
};

/** The moment of the reading nearest to a level within a stretch; null if the stretch has none. */
export const nearestToLevel = (
  { atSeconds, celsius }: Course,
  fromSeconds: number,
  toSeconds: number,
  levelC: number,
): number | null => {
  let nearest = -1;
  for (let i = lowerBound(atSeconds, fromSeconds); i < atSeconds.length; i++) {
    if (atSeconds[i]! > toSeconds) break;
    const isNearer =
      nearest < 0 || Math.abs(celsius[i]! - levelC) < Math.abs(celsius[nearest]! - levelC);
    if (isNearer) nearest = i;
  }
  return nearest < 0 ? null : atSeconds[nearest]!;
};
