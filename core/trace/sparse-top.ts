import { medianInterval } from './clock.ts';
import type { Readings } from './course.ts';

/**
 * Readings this far apart and more bend nowhere between: each may be a corner of its own (chosen: as
 * long as the shoulders by which a knee is else found, which then hold no three readings).
 */
const SPARSE_SECONDS = 1200;
/** Readings this near the highest are the same top, held (chosen: as little as any hold drifts). */
const SAME_TOP_C = 6;

/** The first and the last reading of the stretch at the top that holds the highest one. */
const topOf = ({ celsius }: Readings): { first: number; last: number } => {
  const top = celsius.reduce((best, value, i) => (value > celsius[best]! ? i : best), 0);
  const isTop = (i: number) => i in celsius && celsius[top]! - celsius[i]! <= SAME_TOP_C;
  let [first, last] = [top, top];
  while (isTop(first - 1)) first--;
  while (isTop(last + 1)) last++;
  return { first, last };
};

/**
 * Joints of legs, with those about the top of a log of readings far apart put on the top readings
 * themselves. A line through such readings would end the climb before the hottest one, and leave the
 * top to the cooling. Other logs' joints are returned as they are.
 *
 * @param joints ascending, the record's first and last moment among them
 */
export const cornersAtSparseTop = (readings: Readings, joints: readonly number[]): number[] => {
  const { atSeconds } = readings;
  if (atSeconds.length < 3 || medianInterval(atSeconds) < SPARSE_SECONDS) return [...joints];
  const { first, last } = topOf(readings);
  const end = atSeconds.length - 1;
  const [from, to] = [atSeconds[Math.max(0, first - 1)]!, atSeconds[Math.min(end, last + 1)]!];
  const others = joints.filter((joint, k) => {
    const isEnd = k === 0 || k === joints.length - 1;
    return isEnd || joint <= from || joint >= to;
  });
  const corners = [atSeconds[first]!, atSeconds[last]!];
  return [...new Set([...others, ...corners])].sort((a, b) => a - b);
};
