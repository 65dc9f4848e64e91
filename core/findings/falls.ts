import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import type { Course } from './legs.ts';

/** Chosen: no controller lets a climb fall back so far; opening a spy-hole takes less. */
const LEAST_FALL_C = 15;

/**
 * Time within a climb from the beginning of a fall until the temperature it fell from is regained,
 * in minutes: 0 without such a fall. A fall that the climb never made up for is its end, and does
 * not count.
 */
export const minutesFallen = (
  { atSeconds, smoothC }: Pick<Trace, 'atSeconds' | 'smoothC'>,
  course: Pick<Course, 'startSeconds' | 'endSeconds'>,
): number => {
  const from = lowerBound(atSeconds, course.startSeconds);
  let top = from;
  let lowestC = Infinity;
  let lostSeconds = 0;
  for (let i = from; i < atSeconds.length && atSeconds[i]! <= course.endSeconds; i++) {
    lowestC = Math.min(lowestC, smoothC[i]!);
    if (smoothC[i]! < smoothC[top]!) continue;
    if (smoothC[top]! - lowestC >= LEAST_FALL_C) lostSeconds += atSeconds[i]! - atSeconds[top]!;
    top = i;
    lowestC = Infinity;
  }
  return lostSeconds / SECONDS_PER_MINUTE;
};
