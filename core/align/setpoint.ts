import type { Trace } from '../model/trace.ts';
import type { IntendedLeg } from '../schedule/intended-curve.ts';
import { celsius as asCelsius, celsiusDelta, seconds, type Seconds } from '../units.ts';
import { lowerBound, picked } from '../numeric/search.ts';
import { findLegs } from '../trace/legs.ts';
import { medianInterval } from '../trace/clock.ts';
import { localSlopes } from '../trace/slopes.ts';
import { averaged, type ThinCurve } from '../trace/thin.ts';
import { plannedClock, SETPOINT_TRUST, type Clock } from './clock.ts';
import { gridOf } from './grid.ts';
import { layLegs } from './lay.ts';

/** A setpoint column with fewer values than this share of the heating's samples says too little. */
const FEWEST_SHARE = 0.5;
/** More points than this place no corner better: some ten seconds apart. */
const MOST_POINTS = 5000;
/** A corner further from a boundary than this belongs to something else (chosen). */
const SAME_CORNER_SECONDS = 900;

/** The logged setpoint as a curve of its own; null without a usable one. */
const setpointCurve = (trace: Trace): ThinCurve | null => {
  const { setpointC, atSeconds } = trace;
  if (setpointC === null) return null;
  const given = Uint32Array.from(atSeconds.keys()).filter((i) => Number.isFinite(setpointC[i]));
  if (given.length < FEWEST_SHARE * heatedSamples(trace)) return null;
  return averaged(picked(atSeconds, given), picked(setpointC, given), MOST_POINTS);
};

/** How many samples lie between the start of heating and its end. */
const heatedSamples = ({ atSeconds, summary }: Trace): number =>
  lowerBound(atSeconds, summary.offSeconds ?? summary.durationSeconds) -
  lowerBound(atSeconds, summary.startSeconds ?? 0);

const cornersOf = (curve: ThinCurve): number[] => {
  const times = curve.atSeconds;
  const slopes = localSlopes(times, curve.celsius, 0, medianInterval(times));
  const legs = findLegs({ ...curve, noiseC: 0, ...slopes });
  return [...legs.map((leg) => leg.startSeconds), seconds(times[times.length - 1]!)];
};

/** The logged setpoint, read once for everything that is asked of it. */
export interface Setpoint {
  readonly curve: ThinCurve;
  /** The moments at which it appears, changes its course and goes. */
  readonly corners: readonly number[];
}

/** Reads the setpoint that the logger wrote; null without a usable one. */
export const readSetpoint = (trace: Trace): Setpoint | null => {
  const curve = setpointCurve(trace);
  return curve === null ? null : { curve, corners: cornersOf(curve) };
};

/** The setpoint as if it were a kiln that follows to the letter. */
const asTrace = (trace: Trace, { atSeconds, celsius }: ThinCurve): Trace => ({
  ...trace,
  atSeconds,
  celsius,
  smoothC: celsius,
  summary: {
    ...trace.summary,
    noiseC: celsiusDelta(0),
    peakC: asCelsius(celsius.reduce((most, value) => Math.max(most, value), -Infinity)),
  },
});

/** A corner this near to where the search put a boundary is that boundary, told better. */
const NEAR_GRID_POINTS = 2;

/**
 * When the programme ended each leg, by the logged setpoint: the schedule laid on the setpoint as it
 * is laid on a kiln. Null for legs that it does not show.
 */
export const setpointClock = (
  trace: Trace,
  { curve, corners }: Setpoint,
  legs: readonly IntendedLeg[],
): Clock => {
  const grid = gridOf(asTrace(trace, curve), legs);
  const { laying } = layLegs(grid, legs, plannedClock(legs));
  const near = NEAR_GRID_POINTS * grid.spacingSeconds;
  return laying.legs.map((leg) => {
    if (leg === null) return null;
    const at = grid.atSeconds[leg.to]!;
    const corner = corners.find((moment) => Math.abs(moment - at) <= near);
    return { endSeconds: corner ?? at, ...SETPOINT_TRUST };
  });
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
