import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { FULL, OFF, type PowerCourse } from './power-course.ts';

/** Below this a kiln is drying and its couple late; heating there tells little (chosen). */
const HEATED_ABOVE_C = 400;

/**
 * Shares of full power at a course's intervals by the logged output, taken to be the share of time
 * for which the relays are closed; 0 after shut-off, NaN where neither is known. Null without an
 * output in the log.
 */
export const outputShares = (
  { atSeconds, outputPercent, summary }: Trace,
  course: PowerCourse,
): Float64Array | null => {
  if (outputPercent === null) return null;
  const { startSeconds, intervalSeconds, celsius, power } = course;
  const { offSeconds, gaps, noReadings } = summary;
  const isUnseen = (at: number) =>
    [...gaps, ...noReadings].some(
      ({ fromSeconds, toSeconds }) =>
        at >= fromSeconds - intervalSeconds && at <= toSeconds + intervalSeconds,
    );
  return Float64Array.from(power, (known, i) => {
    const at = startSeconds + i * intervalSeconds;
    if (known === OFF) return 0;
    if (celsius[i]! < HEATED_ABOVE_C || at >= (offSeconds ?? Infinity) || isUnseen(at)) return NaN;
    const from = lowerBound(atSeconds, at - intervalSeconds / 2);
    const to = lowerBound(atSeconds, at + intervalSeconds / 2 + 1e-6);
    const logged = outputPercent.subarray(from, to).filter((value) => Number.isFinite(value));
    if (logged.length === 0) return known === FULL ? 1 : NaN;
    return logged.reduce((sum, value) => sum + value, 0) / logged.length / 100;
  });
};
