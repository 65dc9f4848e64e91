import type { Trace } from '../model/trace.ts';
import { isFreeClimb, type IntendedLeg } from '../schedule/intended-curve.ts';
import type { Seconds } from '../units.ts';
import { snapToSetpoint } from './setpoint.ts';
import { courseBetween, type Course } from '../trace/course.ts';
import { locateKnee, type KneeSearch } from '../trace/knee.ts';
import { lowerBound } from '../numeric/search.ts';
import type { Grid } from './grid.ts';
import { lastRiseBegins, settlingOf } from './last-rise.ts';
import type { Laying } from './lay.ts';

/** A knee is looked for this many grid points on either side of where the search put it. */
const REACH_POINTS = 1.5;
const SHORTEST_REACH_SECONDS = 480;

export interface RefinedLaying {
  /** In the order of the intended legs; null where a leg never happened. */
  readonly legs: readonly (Course | null)[];
  /** The final natural cooling; null where the record ends before it. */
  readonly cooling: Course | null;
  /** The largest distance to the logged setpoint's corners; null without a setpoint. */
  readonly setpointDisagreementSeconds: Seconds | null;
}

/** The moments at which one leg gives way to the next, found on the grid. */
const boundaryPoints = (laying: Laying): number[] => {
  const points = laying.legs.flatMap((leg) => (leg === null ? [] : [leg.from, leg.to]));
  if (laying.off !== null) points.push(laying.off);
  return [...new Set(points)];
};

/** A target further than this from where a leg was laid to end was not reached. */
const NEAR_TARGET_C = 15;
/** A kiln that cannot follow has arrived when it is this near its target, or within its noise. */
const ARRIVED_C = 1;
/** A leg whose last stretch runs slower than this share of its plan is one the kiln cannot follow. */
const FOLLOWED_SHARE = 0.85;
const LAST_STRETCH_SECONDS = 1200;

interface Arrival {
  readonly levelC: number;
  readonly direction: 1 | -1;
  /** The kiln gave all it had (or could not cool faster): no knee marks its arrival. */
  readonly isLimited: boolean;
}

/** Where climbs and controlled falls arrive, by the point they were laid to end. */
const arrivals = (
  trace: Trace,
  grid: Grid,
  laying: Laying,
  legs: readonly IntendedLeg[],
): Map<number, Arrival> => {
  const found = new Map<number, Arrival>();
  laying.legs.forEach((leg, k) => {
    const { kind, endC, rateCPerHour } = legs[k]!;
    if (leg === null || kind === 'hold') return;
    const direction = kind === 'ramp' ? 1 : -1;
    if (direction * (endC - grid.celsius[leg.to]!) > NEAR_TARGET_C) return;
    const end = grid.atSeconds[leg.to]!;
    const stretch = Math.min(LAST_STRETCH_SECONDS, end - grid.atSeconds[leg.from]!);
    const slope = courseBetween(trace, end - stretch, end).rateCPerHour;
    found.set(leg.to, {
      levelC: endC,
      direction,
      isLimited: rateCPerHour === null || slope / rateCPerHour < FOLLOWED_SHARE,
    });
  });
  return found;
};

/** When the smoothed course comes within reach of a level, near a moment; null if it does not. */
const crossingOf = (trace: Trace, arrival: Arrival, search: KneeSearch): number | null => {
  const reach = Math.max(ARRIVED_C, trace.summary.noiseC);
  const lower = lowerBound(trace.atSeconds, search.fromSeconds);
  const upper = lowerBound(trace.atSeconds, search.toSeconds);
  for (let i = lower; i < upper; i++) {
    const lack = arrival.direction * (arrival.levelC - trace.smoothC[i]!);
    if (lack <= reach) return i === lower ? null : trace.atSeconds[i]!;
  }
  return null;
};

/** A climb laid to end this far past its target took in some of what came after it. */
const OVERRUN_C = 4;

/** When a course that was laid to run past its target came to it; null if it did not run past. */
const passedAt = (trace: Trace, arrival: Arrival, endSeconds: number): number | null => {
  const lackAt = (i: number) => arrival.direction * (arrival.levelC - trace.smoothC[i]!);
  const end = Math.min(lowerBound(trace.atSeconds, endSeconds), trace.celsius.length - 1);
  if (lackAt(end) > -Math.max(OVERRUN_C, trace.summary.noiseC)) return null;
  let i = end;
  while (i > 0 && lackAt(i) < 0) i--;
  return trace.atSeconds[i]!;
};

/** The levels of holds from which the kiln goes up with all its power, by the point they end. */
const departures = (laying: Laying, legs: readonly IntendedLeg[]): Map<number, number> => {
  const found = new Map<number, number>();
  laying.legs.forEach((leg, k) => {
    const isLeft = leg !== null && laying.legs[k + 1] != null && legs[k]!.kind === 'hold';
    if (isLeft && isFreeClimb(legs[k + 1])) found.set(leg.to, legs[k]!.endC);
  });
  return found;
};

/**
 * When a course left a level for good, looking back from a moment. At full power the curve bends most
 * some minutes after the power came on, when the kiln is well above the hold that it left.
 */
const leftAt = (trace: Trace, levelC: number, limitSeconds: number, moment: number): number => {
  // The readings themselves: smoothed, a rise so sharp seems to begin minutes early.
  const { atSeconds, celsius } = trace;
  const at = Math.min(lowerBound(atSeconds, moment), celsius.length - 1);
  const begun = lastRiseBegins(trace, lowerBound(atSeconds, limitSeconds), at + 1);
  const highestC = Math.max(levelC, celsius[begun]!) + settlingOf(trace);
  let i = at;
  while (i > begun && celsius[i]! > highestC) i--;
  return i < at ? atSeconds[i]! : moment;
};

/** The moment within a search at which one leg gave way to the next. */
const boundaryMoment = (trace: Trace, arrival: Arrival | null, search: KneeSearch): number => {
  const crossing = arrival?.isLimited === true ? crossingOf(trace, arrival, search) : null;
  const moment = crossing ?? locateKnee(trace.atSeconds, trace.celsius, search);
  const passed = arrival === null ? null : passedAt(trace, arrival, moment);
  return passed !== null && passed > search.leftLimitSeconds ? passed : moment;
};

/** The grid's boundaries moved to where the full samples bend. */
const refinedMoments = (
  trace: Trace,
  grid: Grid,
  laying: Laying,
  legs: readonly IntendedLeg[],
): Map<number, number> => {
  const arriving = arrivals(trace, grid, laying, legs);
  const leaving = departures(laying, legs);
  const points = boundaryPoints(laying);
  const reach = Math.max(SHORTEST_REACH_SECONDS, REACH_POINTS * grid.spacingSeconds);
  const start = trace.summary.startSeconds;
  const recordEnd = trace.atSeconds[trace.atSeconds.length - 1]!;
  const momentOf = (point: number, k: number): number => {
    const at = grid.atSeconds[point]!;
    if (k === 0 && start !== null && Math.abs(start - at) <= 2 * reach) return start;
    if (point === grid.atSeconds.length - 1 && laying.off === null) return recordEnd;
    const before = k === 0 ? trace.atSeconds[0]! : grid.atSeconds[points[k - 1]!]!;
    const after = k === points.length - 1 ? recordEnd : grid.atSeconds[points[k + 1]!]!;
    const arrival = arriving.get(point) ?? null;
    const levelC = leaving.get(point);
    const search = {
      fromSeconds: Math.max(at - reach, (before + at) / 2),
      toSeconds: Math.min(at + reach, (at + after) / 2),
      leftLimitSeconds: before,
      rightLimitSeconds: after,
      noiseC: trace.summary.noiseC,
      ...(arrival === null ? {} : { levelC: arrival.levelC }),
    };
    const moment = boundaryMoment(trace, arrival, search);
    return levelC === undefined ? moment : leftAt(trace, levelC, before, moment);
  };
  return new Map(points.map((point, k) => [point, momentOf(point, k)]));
};

/** The boundaries at which the programme moves on: where a climb or a controlled fall begins. */
const programmePoints = (laying: Laying, legs: readonly IntendedLeg[]): Set<number> => {
  const points = laying.legs.flatMap((leg, k) =>
    leg !== null && legs[k]!.kind !== 'hold' ? [leg.from] : [],
  );
  if (laying.off !== null) points.push(laying.off);
  // The first boundary is the start of heating, which the kiln shows and not the setpoint.
  points.shift();
  return new Set(points);
};

/**
 * Takes a laying from the grid to the full samples: exact moments and temperatures of every leg,
 * held against the corners of a logged setpoint where there is one.
 */
export const refineLaying = (
  trace: Trace,
  grid: Grid,
  laying: Laying,
  legs: readonly IntendedLeg[],
  setpointCorners: readonly number[] | null,
): RefinedLaying => {
  const { moments, disagreementSeconds } = snapToSetpoint(
    refinedMoments(trace, grid, laying, legs),
    programmePoints(laying, legs),
    setpointCorners,
  );
  const momentOf = (point: number) => moments.get(point) ?? grid.atSeconds[point]!;
  const recordEnd = trace.atSeconds[trace.atSeconds.length - 1]!;
  return {
    legs: laying.legs.map((leg) =>
      leg === null ? null : courseBetween(trace, momentOf(leg.from), momentOf(leg.to)),
    ),
    cooling: laying.off === null ? null : courseBetween(trace, momentOf(laying.off), recordEnd),
    setpointDisagreementSeconds: disagreementSeconds,
  };
};
