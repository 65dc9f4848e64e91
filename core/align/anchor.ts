import { mean } from '../numeric/statistics.ts';
import type { Trace } from '../model/trace.ts';
import type { IntendedLeg, IntendedStart } from '../schedule/intended-curve.ts';
import type { Course } from '../trace/course.ts';
import { lowerBound } from '../numeric/search.ts';
import { celsius, seconds } from '../units.ts';

/** Where a kiln is taken to have started when the log begins hot and does not show it (chosen). */
const ROOM_C = celsius(20);
/** The rest whose mean is the starting temperature (chosen). */
const REST_SECONDS = 600;

/**
 * Where the plan is laid: at the moment heating begins, from the temperature the kiln had then. For
 * a log that begins hot it is laid from a room's temperature for now; {@link anchoredHot} moves it.
 */
export const startOfPlan = (trace: Trace): IntendedStart => {
  const { startSeconds } = trace.summary;
  if (startSeconds === null) return { atSeconds: seconds(0), celsius: ROOM_C };
  return { atSeconds: startSeconds, celsius: celsius(restBefore(trace, startSeconds)) };
};

/** What the couple read before heating began: the mean over its last minutes at rest. */
const restBefore = (trace: Trace, startSeconds: number): number => {
  const to = Math.max(1, lowerBound(trace.atSeconds, startSeconds + 1e-6));
  const from = Math.min(to - 1, lowerBound(trace.atSeconds, startSeconds - REST_SECONDS));
  return mean(trace.celsius.subarray(from, to));
};

/**
 * The start that makes the plan pass through the first recorded leg's beginning: the best that can
 * be said of a firing whose beginning was not recorded.
 */
export const anchoredHot = (
  start: IntendedStart,
  planned: readonly IntendedLeg[],
  actual: readonly (Course | null)[],
): IntendedStart => {
  const first = actual.findIndex((course) => course !== null);
  const leg = planned[first];
  const course = actual[first];
  if (leg === undefined || course === null || course === undefined) return start;
  const span = leg.endC - leg.startC;
  const share = span === 0 ? 0 : Math.min(1, Math.max(0, (course.startC - leg.startC) / span));
  const planSeconds = leg.startSeconds + share * (leg.endSeconds - leg.startSeconds);
  return {
    atSeconds: seconds(start.atSeconds + course.startSeconds - planSeconds),
    celsius: start.celsius,
  };
};
