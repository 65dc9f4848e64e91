import type { AlignedLeg, Overshoot } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { celsiusDelta, seconds } from '../units.ts';

/** Less than this over a target is a controller's ordinary settling (chosen). */
const SETTLING_C = 2;
const SETTLING_SIGMAS = 3;
/** A single high reading is no overshoot: this many in a row must stand that high. */
const READINGS_IN_A_ROW = 3;

/** The highest level that several readings in a row stood at, and the first of them. */
const highestSustained = (
  { celsius }: Trace,
  from: number,
  to: number,
): { levelC: number; first: number } => {
  let highest = { levelC: -Infinity, first: from };
  for (let i = from; i + READINGS_IN_A_ROW <= to; i++) {
    const levelC = celsius.subarray(i, i + READINGS_IN_A_ROW).reduce((a, b) => Math.min(a, b));
    if (levelC > highest.levelC) highest = { levelC, first: i };
  }
  return highest;
};

/** The hottest of the readings in a row that begin with one: the peak that the curve shows. */
const hottestOf = ({ celsius }: Trace, first: number): number => {
  let hottest = first;
  for (let i = first; i < first + READINGS_IN_A_ROW; i++) {
    if (celsius[i]! > celsius[hottest]!) hottest = i;
  }
  return hottest;
};

const secondsAbove = (trace: Trace, from: number, to: number, levelC: number): number => {
  let above = 0;
  for (let i = from; i + 1 < to; i++) {
    if (trace.celsius[i]! > levelC) above += trace.atSeconds[i + 1]! - trace.atSeconds[i]!;
  }
  return above;
};

/** A boundary may lie this far from where it was laid; a climb that follows is not an overshoot. */
const BOUNDARY_SECONDS = 120;

/**
 * The moment until which a kiln that climbed to a target was to stay at it: the end of the hold, or
 * of the fall that follows a peak. Null for a climb that goes straight on, which cannot overshoot.
 */
const stayEnds = (legs: readonly AlignedLeg[], k: number): number | null => {
  const [climb, next, after] = [legs[k]!, legs[k + 1], legs[k + 2]];
  const isHeld = next?.kind === 'hold' && next.actual !== null;
  const stay = isHeld ? next : climb;
  const following = isHeld ? after : next;
  if (following?.kind === 'cooling') return following.actual?.endSeconds ?? null;
  if (!isHeld) return following === undefined ? (climb.actual?.endSeconds ?? null) : null;
  return following === undefined
    ? stay.actual!.endSeconds
    : stay.actual!.endSeconds - BOUNDARY_SECONDS;
};

/**
 * How far the kiln went past the target of each climb before the programme went on; a fall that
 * follows is looked at as well, since what is over then still shows. Climbs that lead straight on are
 * left out.
 */
export const findOvershoots = (trace: Trace, legs: readonly AlignedLeg[]): Overshoot[] => {
  const settlingC = Math.max(SETTLING_C, SETTLING_SIGMAS * trace.summary.noiseC);
  return legs.flatMap((leg, k) => {
    if (leg.kind !== 'ramp' || leg.segment === null || leg.actual === null) return [];
    const endSeconds = stayEnds(legs, k);
    if (endSeconds === null) return [];
    const targetC = leg.planned.endC;
    const from = lowerBound(trace.atSeconds, leg.actual.startSeconds);
    const to = lowerBound(trace.atSeconds, endSeconds + 1);
    const highest = highestSustained(trace, from, to);
    if (!(highest.levelC - targetC > settlingC)) return [];
    const hottest = hottestOf(trace, highest.first);
    return [
      {
        segment: leg.segment,
        overC: celsiusDelta(trace.celsius[hottest]! - targetC),
        atSeconds: seconds(trace.atSeconds[hottest]!),
        aboveForSeconds: seconds(secondsAbove(trace, from, to, targetC + settlingC)),
      },
    ];
  });
};
