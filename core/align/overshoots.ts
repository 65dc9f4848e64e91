import type { AlignedLeg, Overshoot } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { celsiusDelta, seconds } from '../units.ts';
import { lastRiseBegins, settlingOf } from './last-rise.ts';

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

/** Whether the programme goes on from a climb's hold with all the power there is. */
const goesOnFreely = (legs: readonly AlignedLeg[], k: number): boolean => {
  const after = legs[k + 2];
  return (
    legs[k + 1]?.kind === 'hold' && after?.kind === 'ramp' && after.planned.rateCPerHour === null
  );
};

/**
 * How far the kiln went past the target of each climb before the programme went on; a fall that
 * follows is looked at as well, since what is over then still shows. Climbs that lead straight on are
 * left out, and so is a rise into a climb at full power, which may be that climb begun early.
 */
export const findOvershoots = (trace: Trace, legs: readonly AlignedLeg[]): Overshoot[] => {
  const settlingC = settlingOf(trace);
  return legs.flatMap((leg, k) => {
    if (leg.kind !== 'ramp' || leg.segment === null || leg.actual === null) return [];
    const endSeconds = stayEnds(legs, k);
    if (endSeconds === null) return [];
    const targetC = leg.planned.endC;
    const from = lowerBound(trace.atSeconds, leg.actual.startSeconds);
    const stayed = lowerBound(trace.atSeconds, endSeconds + 1);
    const to = goesOnFreely(legs, k) ? lastRiseBegins(trace, from, stayed) : stayed;
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
