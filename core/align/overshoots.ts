import type { AlignedLeg, Overshoot } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../trace/search.ts';
import { celsiusDelta, seconds } from '../units.ts';

/** Less than this over a target is a controller's ordinary settling (chosen). */
const SETTLING_C = 2;
const SETTLING_SIGMAS = 3;
/** A single high reading is no overshoot: this many in a row must stand that high. */
const READINGS_IN_A_ROW = 3;

/** The highest level that several readings in a row stood at, and when. */
const highestSustained = (
  trace: Trace,
  from: number,
  to: number,
): { celsius: number; at: number } => {
  let highest = { celsius: -Infinity, at: from };
  for (let i = from; i + READINGS_IN_A_ROW <= to; i++) {
    let lowest = Infinity;
    for (let k = i; k < i + READINGS_IN_A_ROW; k++) lowest = Math.min(lowest, trace.celsius[k]!);
    if (lowest > highest.celsius) highest = { celsius: lowest, at: i + 1 };
  }
  return highest;
};

const secondsAbove = (trace: Trace, from: number, to: number, levelC: number): number => {
  let above = 0;
  for (let i = from; i + 1 < to; i++) {
    if (trace.celsius[i]! > levelC) above += trace.atSeconds[i + 1]! - trace.atSeconds[i]!;
  }
  return above;
};

/** The last leg of a stay at one target: the hold after a climb, or the climb itself at a peak. */
const stayEnds = (legs: readonly AlignedLeg[], k: number): AlignedLeg | null => {
  const next = legs[k + 1];
  if (next === undefined) return legs[k]!;
  if (next.kind === 'hold' && next.actual !== null) return next;
  // A climb that goes straight on to a higher target cannot overshoot its own.
  return next.kind === 'ramp' && next.actual !== null ? null : legs[k]!;
};

/**
 * How far the kiln went past the target of each climb, from its arrival to the end of the hold; at a
 * peak without a hold, for as long as it stood above. Climbs that lead straight on are left out.
 */
export const findOvershoots = (trace: Trace, legs: readonly AlignedLeg[]): Overshoot[] => {
  const settlingC = Math.max(SETTLING_C, SETTLING_SIGMAS * trace.summary.noiseC);
  return legs.flatMap((leg, k) => {
    const stay = stayEnds(legs, k);
    if (leg.kind !== 'ramp' || leg.segment === null || leg.actual === null) return [];
    if (stay?.actual == null) return [];
    const targetC = leg.planned.endC;
    const from = lowerBound(trace.atSeconds, leg.actual.startSeconds);
    const peakEnd = trace.celsius.length;
    const holdEnd = lowerBound(trace.atSeconds, stay.actual.endSeconds);
    let to = Math.min(peakEnd, holdEnd + 1);
    // What is over at the end of the stay belongs to it for as long as it lasts.
    while (to < peakEnd && trace.celsius[to]! > targetC + settlingC) to++;
    const highest = highestSustained(trace, from, Math.min(peakEnd, to + 1));
    const over = highest.celsius - targetC;
    if (!(over > settlingC)) return [];
    return [
      {
        segment: leg.segment,
        overC: celsiusDelta(over),
        atSeconds: seconds(trace.atSeconds[highest.at]!),
        aboveForSeconds: seconds(secondsAbove(trace, from, to, targetC + settlingC)),
      },
    ];
  });
};
