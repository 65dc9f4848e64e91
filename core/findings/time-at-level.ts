import type { Trace } from '../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import { lowerBound } from '../trace/search.ts';

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
 * How long the record stood at a level around one moment, in minutes; null if it was not within
 * `toleranceC` of the level then.
 *
 * A climb that arrives at 60 °C/h is within 3 °C of its target three minutes early. So each end is
 * carried on in a straight line, from where the record is three tolerances off over where it is one
 * off, to the level itself.
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
  const endSeconds = (step: 1 | -1): number => {
    const inner = leavesAtSeconds(course, here, step, levelC, toleranceC);
    if (inner === null) return step === 1 ? atSeconds[atSeconds.length - 1]! : atSeconds[0]!;
    const outer = leavesAtSeconds(course, here, step, levelC, 3 * toleranceC) ?? inner;
    const carriedOn = inner - (outer - inner) / 2;
    return step * Math.max(step * carriedOn, step * atSeconds[here]!);
  };
  return (endSeconds(1) - endSeconds(-1)) / SECONDS_PER_MINUTE;
};
