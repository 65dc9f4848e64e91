import type { Trace } from '../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import { lowerBound } from '../numeric/search.ts';

type Course = Pick<Trace, 'atSeconds' | 'smoothC'>;

/**
 * The moment at which the record, followed from `here` forwards or backwards, leaves `withinC` of
 * the level; null where the record ends before it does.
 */
const leavesAtSeconds = (
  { atSeconds, smoothC }: Course,
  here: number,
  step: 1 | -1,
  levelC: number,
  withinC: number,
): number | null => {
  const offC = (i: number): number => Math.abs(smoothC[i]! - levelC);
  let i = here;
  while (i >= 0 && i < smoothC.length && offC(i) <= withinC) i += step;
  if (i < 0 || i >= smoothC.length) return null;
  const inside = i - step;
  const share = (withinC - offC(inside)) / (offC(i) - offC(inside));
  return atSeconds[inside]! + share * (atSeconds[i]! - atSeconds[inside]!);
};

/**
 * The ends are read this many tolerances off the level, where the course is straight again. Chosen
 * by trial on firings of the test kilns: between 2 and 5 the middle error is −0.9 min, nineteen in
 * twenty within −2.6 and 0; between 1 and 3 it is −1.7, and −5.4.
 */
const NEAR_TOLERANCES = 2;
const FAR_TOLERANCES = 5;

/**
 * How long the record stood at a level around one moment, in minutes; null if it was not within
 * `toleranceC` of the level then.
 *
 * A climb that arrives at 60 °C/h is within 3 °C of its target three minutes early, a kiln creeps to
 * its level, and smoothing rounds the corners. So each end is carried on to the level in a straight
 * line from the two places where the record was clearly off it.
 */
export const minutesAtLevel = (
  course: Course,
  momentSeconds: number,
  levelC: number,
  toleranceC: number,
): number | null => {
  const { atSeconds, smoothC } = course;
  if (atSeconds.length === 0) return null;
  const here = Math.min(lowerBound(atSeconds, momentSeconds), atSeconds.length - 1);
  if (Math.abs(smoothC[here]! - levelC) > toleranceC) return null;
  const leaves = (step: 1 | -1, tolerances: number): number | null =>
    leavesAtSeconds(course, here, step, levelC, tolerances * toleranceC);
  const endSeconds = (step: 1 | -1): number => {
    const near = leaves(step, NEAR_TOLERANCES);
    if (near === null) return step === 1 ? atSeconds[atSeconds.length - 1]! : atSeconds[0]!;
    const far = leaves(step, FAR_TOLERANCES) ?? near;
    const lead = NEAR_TOLERANCES / (FAR_TOLERANCES - NEAR_TOLERANCES);
    const carriedOn = near - (far - near) * lead;
    return step * Math.max(step * carriedOn, step * atSeconds[here]!);
  };
  return (endSeconds(1) - endSeconds(-1)) / SECONDS_PER_MINUTE;
};

/** The moment of the reading nearest to a level within a stretch; null if the stretch has none. */
export const nearestToLevel = (
  { atSeconds, smoothC }: Course,
  fromSeconds: number,
  toSeconds: number,
  levelC: number,
): number | null => {
  let nearest = -1;
  for (let i = lowerBound(atSeconds, fromSeconds); i < atSeconds.length; i++) {
    if (atSeconds[i]! > toSeconds) break;
    const isNearer =
      nearest < 0 || Math.abs(smoothC[i]! - levelC) < Math.abs(smoothC[nearest]! - levelC);
    if (isNearer) nearest = i;
  }
  return nearest < 0 ? null : atSeconds[nearest]!;
};
