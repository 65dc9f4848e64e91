import type { Trace } from '../model/trace.ts';
import { seconds, type Seconds } from '../units.ts';
import { picked } from '../trace/search.ts';
import { findLegs } from '../trace/legs.ts';
import { medianInterval } from '../trace/clock.ts';
import { localSlopes } from '../trace/slopes.ts';
import { averaged } from '../trace/thin.ts';

/** A setpoint column that is empty for more than this share of the record says too little. */
const FEWEST_SHARE = 0.5;
/** More points than this place no corner better: some ten seconds apart. */
const MOST_POINTS = 5000;
/** A corner further from a boundary than this belongs to something else (chosen). */
const SAME_CORNER_SECONDS = 900;

/**
 * The moments at which the logged setpoint appears, changes its course and goes; null without a
 * usable setpoint.
 */
export const setpointCorners = (trace: Trace): number[] | null => {
  const { setpointC, atSeconds } = trace;
  if (setpointC === null) return null;
  const given = Uint32Array.from(atSeconds.keys()).filter((i) => Number.isFinite(setpointC[i]));
  if (given.length < FEWEST_SHARE * atSeconds.length) return null;
  const curve = averaged(picked(atSeconds, given), picked(setpointC, given), MOST_POINTS);
  const times = curve.atSeconds;
  const slopes = localSlopes(times, curve.celsius, 0, medianInterval(times));
  const legs = findLegs({ ...curve, noiseC: 0, ...slopes });
  const lastSeconds = times[times.length - 1]!;
  return [...legs.map((leg) => leg.startSeconds), seconds(lastSeconds)];
};

export interface Snapped {
  readonly moments: ReadonlyMap<number, number>;
  /** The largest distance between a boundary and the corner it was held against. */
  readonly disagreementSeconds: Seconds | null;
}

/**
 * Holds boundaries against the logged setpoint's corners. Those at which the programme moves on are
 * taken from the setpoint, which knows; those at which the kiln arrives stay the kiln's own.
 */
export const snapToSetpoint = (
  moments: ReadonlyMap<number, number>,
  movesOn: ReadonlySet<number>,
  corners: readonly number[] | null,
): Snapped => {
  if (corners === null || corners.length === 0) return { moments, disagreementSeconds: null };
  let disagreement = 0;
  const snapped = new Map<number, number>();
  let previous = -Infinity;
  for (const [point, moment] of moments) {
    const nearest = corners.reduce((best, corner) =>
      Math.abs(corner - moment) < Math.abs(best - moment) ? corner : best,
    );
    const distance = Math.abs(nearest - moment);
    disagreement = Math.max(disagreement, distance);
    const isSame = movesOn.has(point) && distance <= SAME_CORNER_SECONDS && nearest > previous;
    previous = isSame ? nearest : Math.max(moment, previous);
    snapped.set(point, previous);
  }
  return { moments: snapped, disagreementSeconds: seconds(disagreement) };
};
