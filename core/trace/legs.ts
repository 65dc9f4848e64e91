import type { TraceLeg } from '../model/trace.ts';
import { courseBetween, type Readings } from './course.ts';
import { StretchFits } from './fits.ts';
import { locateKnee } from './knee.ts';
import { cheapestPieces } from './pieces.ts';
import { interpolate } from '../numeric/search.ts';
import type { Slopes } from './slopes.ts';
import { cornersAtSparseTop } from './sparse-top.ts';
import { averaged } from './thin.ts';

/** The search for legs works on this many averaged points: two minutes of a day (chosen). */
const THIN_POINTS = 600;
/** A leg has at least this many points of the thinned curve. */
const SHORTEST_POINTS = 3;
/** Departures from a leg's own shape below this are the kiln's ripple, not another leg (chosen). */
const RIPPLE_C = 1;
/** What one more leg must save, in squared ripples (chosen: 40 keeps relay ripple in one leg). */
const LEG_PENALTY = 40;
/** A hold climbs or falls slower than this (chosen: below the slowest ramp that is programmed). */
const HOLD_RATE_C_PER_HOUR = 10;
/** … and moves less than this in all. */
const HOLD_DRIFT_C = 6;
/** Two legs whose slopes at their joint agree within this share are one (chosen). */
const SAME_SLOPE_SHARE = 0.25;
const SAME_SLOPE_C_PER_HOUR = 8;
/** Slopes are compared this far on either side of a joint. */
const JOINT_SECONDS = 600;

interface Measured extends Slopes, Readings {
  readonly noiseC: number;
}

const kindOf = (rateCPerHour: number, changeC: number, noiseC: number): TraceLeg['kind'] => {
  const drift = Math.max(HOLD_DRIFT_C, 4 * noiseC);
  const isSlow = Math.abs(rateCPerHour) <= HOLD_RATE_C_PER_HOUR;
  if (isSlow && Math.abs(changeC) <= drift) return 'hold';
  return rateCPerHour > 0 ? 'ramp' : 'cooling';
};

const legBetween = (trace: Measured, startSeconds: number, endSeconds: number): TraceLeg => {
  const course = courseBetween(trace, startSeconds, endSeconds);
  const kind = kindOf(course.rateCPerHour, course.endC - course.startC, trace.noiseC);
  return { kind, ...course };
};

/** Whether the course runs on through a joint, so that the two legs are one. */
const runsOn = (trace: Measured, before: TraceLeg, after: TraceLeg): boolean => {
  if (before.kind !== after.kind) return false;
  const joint = before.endSeconds;
  const reach = (leg: TraceLeg) => Math.min(JOINT_SECONDS, (leg.endSeconds - leg.startSeconds) / 2);
  const slopeAt = (moment: number) => interpolate(trace.atSeconds, trace.slopeCPerHour, moment);
  const left = slopeAt(joint - reach(before));
  const right = slopeAt(joint + reach(after));
  const allowed = Math.max(
    SAME_SLOPE_C_PER_HOUR,
    SAME_SLOPE_SHARE * Math.max(Math.abs(left), Math.abs(right)),
  );
  return Math.abs(left - right) <= allowed;
};

const joined = (trace: Measured, legs: readonly TraceLeg[]): TraceLeg[] => {
  const result: TraceLeg[] = [];
  for (const leg of legs) {
    const last = result.at(-1);
    if (last !== undefined && runsOn(trace, last, leg)) {
      result[result.length - 1] = legBetween(trace, last.startSeconds, leg.endSeconds);
    } else {
      result.push(leg);
    }
  }
  return result;
};

/** Moves the joints found on the thinned curve to where the full samples bend. */
const refined = (trace: Measured, joints: readonly number[], reachSeconds: number): number[] =>
  joints.map((joint, k) => {
    const previous = joints[k - 1];
    const next = joints[k + 1];
    if (previous === undefined || next === undefined) return joint;
    return locateKnee(trace.atSeconds, trace.celsius, {
      fromSeconds: Math.max(joint - reachSeconds, (previous + joint) / 2),
      toSeconds: Math.min(joint + reachSeconds, (joint + next) / 2),
      leftLimitSeconds: previous,
      rightLimitSeconds: next,
    });
  });

/**
 * The legs that the trace itself shows, with or without a schedule: the cheapest cut into parabolas
 * of a thinned curve (a ramp that the kiln could not follow bends, and so does cooling), refined on
 * the full samples, named by slope, and joined where the course runs on. Of readings far apart the
 * highest is a corner.
 */
export const findLegs = (trace: Measured): TraceLeg[] => {
  const thin = averaged(trace.atSeconds, trace.celsius, THIN_POINTS);
  const count = thin.atSeconds.length;
  if (count < 2) return [];
  const fits = new StretchFits(thin.atSeconds, thin.celsius);
  const ripple = Math.max(RIPPLE_C, trace.noiseC / 2) ** 2;
  const shortest = Math.min(SHORTEST_POINTS, count);
  const ends = cheapestPieces(count, shortest, LEG_PENALTY, (from, to) => {
    return fits.parabolaSquares(from, to) / ripple;
  });
  const jointAt = (end: number) => (thin.atSeconds[end - 1]! + thin.atSeconds[end]!) / 2;
  const firstSeconds = trace.atSeconds[0]!;
  const lastSeconds = trace.atSeconds[trace.atSeconds.length - 1]!;
  const joints = [firstSeconds, ...ends.slice(0, -1).map(jointAt), lastSeconds];
  const reach = (2 * (lastSeconds - firstSeconds)) / count;
  // Twice: where a leg is short, its one joint is in the way of the other until both have moved.
  const moved = refined(trace, refined(trace, joints, reach), reach);
  const cornered = cornersAtSparseTop(trace, moved);
  const legs = cornered
    .slice(1)
    .map((end, k) => legBetween(trace, cornered[k]!, end))
    .filter((leg) => leg.endSeconds > leg.startSeconds);
  return joined(trace, joined(trace, legs));
};
