import type { Trace } from '../model/trace.ts';
import type { IntendedLeg } from '../schedule/intended-curve.ts';
import type { Seconds } from '../units.ts';
import { setpointCorners, snapToSetpoint } from './setpoint.ts';
import { courseBetween, type Course } from '../trace/course.ts';
import { locateKnee } from '../trace/knee.ts';
import type { Grid } from './grid.ts';
import type { Laying } from './lay.ts';

/** A knee is looked for this many grid points on either side of where the search put it. */
const REACH_POINTS = 1.5;
const SHORTEST_REACH_SECONDS = 300;
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

/** The grid's boundaries moved to where the full samples bend. */
const refinedMoments = (trace: Trace, grid: Grid, laying: Laying): Map<number, number> => {
  const points = boundaryPoints(laying);
  const last = grid.atSeconds.length - 1;
  const spacing = (grid.atSeconds[last]! - grid.atSeconds[0]!) / Math.max(1, last);
  const reach = Math.max(SHORTEST_REACH_SECONDS, REACH_POINTS * spacing);
  const recordEnd = trace.atSeconds[trace.atSeconds.length - 1]!;
  const moments = new Map<number, number>();
  points.forEach((point, k) => {
    const at = grid.atSeconds[point]!;
    const start = trace.summary.startSeconds;
    if (k === 0 && start !== null && Math.abs(start - at) <= 2 * reach) {
      moments.set(point, start);
      return;
    }
    if (point === last && laying.off === null) {
      moments.set(point, recordEnd);
      return;
    }
    const before = k === 0 ? trace.atSeconds[0]! : grid.atSeconds[points[k - 1]!]!;
    const after = k === points.length - 1 ? recordEnd : grid.atSeconds[points[k + 1]!]!;
    const knee = locateKnee(trace.atSeconds, trace.celsius, {
      fromSeconds: Math.max(at - reach, (before + at) / 2),
      toSeconds: Math.min(at + reach, (at + after) / 2),
      leftLimitSeconds: before,
      rightLimitSeconds: after,
    });
    moments.set(point, knee);
  });
  return moments;
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

/** Takes a laying from the grid to the full samples: exact moments and temperatures of every leg. */
export const refineLaying = (
  trace: Trace,
  grid: Grid,
  laying: Laying,
  legs: readonly IntendedLeg[],
): RefinedLaying => {
  const { moments, disagreementSeconds } = snapToSetpoint(
    refinedMoments(trace, grid, laying),
    programmePoints(laying, legs),
    setpointCorners(trace),
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
