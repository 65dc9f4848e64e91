import type { Elements } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { solveLinear } from '../numeric/least-squares.ts';
import { averaged } from '../trace/thin.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../units.ts';

/** Looked at to either side of a drop (chosen: long enough to know slope and bend). */
const REACH_SECONDS = 40 * SECONDS_PER_MINUTE;
/** Nearer than this to the ends of a stretch a drop is its own beginning or end (chosen). */
const MARGIN_SECONDS = 20 * SECONDS_PER_MINUTE;
/** Leaving full power bends the slope too, and is no loss (chosen). */
const LEAVING_SECONDS = 15 * SECONDS_PER_MINUTE;
const STEP_SECONDS = 2 * SECONDS_PER_MINUTE;
const MOST_POINTS = 120;
const FEWEST_POINTS = 16;
/** A drop must stand out by this many standard errors, and be worth a closer look (chosen). */
const SURE_ERRORS = 5;
const LEAST_DROP_C_PER_HOUR = 12;

export interface SlopeDrop {
  readonly atSeconds: number;
  readonly dropCPerHour: number;
}

/** Change of slope at a moment beside a smooth bend, and what is left over, in °C/h and °C². */
const dropAt = (
  times: Float64Array,
  celsius: Float64Array,
  atSeconds: number,
): { readonly dropCPerHour: number; readonly errorCPerHour: number } => {
  const rows = Array.from(times, (time) => {
    const hours = (time - atSeconds) / SECONDS_PER_HOUR;
    return [1, hours, hours * hours, Math.max(0, hours)];
  });
  const normal = [0, 1, 2, 3].map((a) =>
    [0, 1, 2, 3].map((b) => rows.reduce((sum, row) => sum + row[a]! * row[b]!, 0)),
  );
  const right = [0, 1, 2, 3].map((a) =>
    rows.reduce((sum, row, i) => sum + row[a]! * celsius[i]!, 0),
  );
  const fit = solveLinear(normal, right);
  const squares = rows.reduce((sum, row, i) => {
    const left = celsius[i]! - row.reduce((value, x, k) => value + x * fit[k]!, 0);
    return sum + left * left;
  }, 0);
  const unit = solveLinear(normal, [0, 0, 0, 1])[3]!;
  return {
    dropCPerHour: -fit[3]!,
    errorCPerHour: Math.sqrt((unit * squares) / Math.max(1, rows.length - 4)),
  };
};

/**
 * The surest sudden drop of the slope within the stretches at full power; null where there is none.
 * Slopes there fall smoothly as losses grow: a corner means that power was lost.
 */
export const findSlopeDrop = (trace: Trace, limited: Elements['limited']): SlopeDrop | null => {
  let best: SlopeDrop | null = null;
  let surest = SURE_ERRORS;
  for (const { fromSeconds, toSeconds } of limited) {
    const end = toSeconds - LEAVING_SECONDS;
    const last = end - MARGIN_SECONDS;
    for (let at = fromSeconds + MARGIN_SECONDS; at <= last; at += STEP_SECONDS) {
      const from = lowerBound(trace.atSeconds, Math.max(fromSeconds, at - REACH_SECONDS));
      const to = lowerBound(trace.atSeconds, Math.min(end, at + REACH_SECONDS));
      const course = averaged(
        trace.atSeconds.subarray(from, to),
        trace.celsius.subarray(from, to),
        MOST_POINTS,
      );
      if (course.atSeconds.length < FEWEST_POINTS) continue;
      const { dropCPerHour, errorCPerHour } = dropAt(course.atSeconds, course.celsius, at);
      const sureness = dropCPerHour / errorCPerHour;
      if (dropCPerHour < LEAST_DROP_C_PER_HOUR || sureness <= surest) continue;
      surest = sureness;
      best = { atSeconds: at, dropCPerHour };
    }
  }
  return best;
};
