import type { Trace } from '../model/trace.ts';
import type { IntendedLeg } from '../schedule/intended-curve.ts';
import { StretchFits } from '../trace/fits.ts';
import { lowerBound } from '../numeric/search.ts';
import { averaged, type ThinCurve } from '../trace/thin.ts';

/** The search lays legs on at most this many averaged points (chosen: 2–4 minutes of a firing). */
const GRID_POINTS = 420;
/** Time before heating begins that the search still looks at: a start may be guessed late. */
const LEAD_SECONDS = 1800;
/** Natural cooling below this says nothing of the legs any more (chosen). */
const COLD_C = 150;
/** A controlled fall that was not quite reached still lies within this of its target (chosen). */
const COOLEST_MARGIN_C = 80;
/** Enough of the cooling from a peak to see that it is natural (chosen). */
const EARLY_STOP_SHARE = 0.8;
/** Departures below this are the kiln's ripple and the controller's work (chosen). */
const RIPPLE_C = 1.5;
/** What a point's misfit counts for is set for points this far apart, whatever the log's interval. */
const WEIGHT_SECONDS = 120;

/** The thinned trace that the search works on, with all that makes a stretch's cost cheap. */
export interface Grid {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  readonly fits: StretchFits;
  /** The spread of a point about a leg's own shape. */
  readonly rippleC: number;
  /** The mean distance between two points. */
  readonly spacingSeconds: number;
  /** What one point counts for: points close together carry correlated ripple. */
  readonly pointWeight: number;
  /** kinks[i]: how sharply the course bends at the points before i, summed as squared deviations. */
  readonly kinks: Float64Array;
  /** Index of the point at which heating begins, as the trace shows it. */
  readonly start: number;
  /** The last sample of the record lies within the grid: nothing was cut off as telling nothing. */
  readonly reachesEnd: boolean;
}

/**
 * The last sample that can still belong to a leg: the kiln never comes back above the coolest target
 * that the schedule has from its hottest on, less a margin, or what an early stop would leave of it.
 */
const lastTellingSample = (trace: Trace, legs: readonly IntendedLeg[]): number => {
  const last = trace.celsius.length - 1;
  const targets = legs.map((leg): number => leg.endC);
  const hottest = targets.indexOf(Math.max(...targets));
  const coolest = Math.min(...targets.slice(Math.max(0, hottest)));
  const level = Math.max(
    COLD_C,
    Math.min(coolest - COOLEST_MARGIN_C, EARLY_STOP_SHARE * trace.summary.peakC),
  );
  if (trace.celsius[last]! > level || trace.summary.peakC <= level) return last;
  const warm = trace.smoothC.findLastIndex((value) => value > level);
  return Math.min(last, Math.max(warm, 0) + 1);
};

/**
 * Puts points on straight lines across gaps, so that a leg can end within one. What the kiln did
 * there is unknown; the straight line is the least that can be said.
 */
const bridged = (thin: ThinCurve): ThinCurve => {
  const count = thin.atSeconds.length;
  const spacing = (thin.atSeconds[count - 1]! - thin.atSeconds[0]!) / Math.max(1, GRID_POINTS);
  const atSeconds: number[] = [];
  const celsius: number[] = [];
  for (let i = 0; i < count; i++) {
    const steps =
      i === 0
        ? 1
        : Math.max(1, Math.round((thin.atSeconds[i]! - thin.atSeconds[i - 1]!) / (2 * spacing)));
    for (let k = 1; k <= steps; k++) {
      const share = k / steps;
      const from = Math.max(0, i - 1);
      atSeconds.push(thin.atSeconds[from]! * (1 - share) + thin.atSeconds[i]! * share);
      celsius.push(thin.celsius[from]! * (1 - share) + thin.celsius[i]! * share);
    }
  }
  return { atSeconds: Float64Array.from(atSeconds), celsius: Float64Array.from(celsius) };
};

/** A bend is measured from this many points before to as many after. */
export const KINK_REACH = 3;
/** A kiln at full power, or cooling, bends no more than this over that reach (chosen). */
const SMOOTH_BEND_C = 1;
/** Bends below this many deviations are noise, of which a long leg has many. */
const NO_KINK = 1.5;

/** Running sums of how far the course bends at each point, beyond what noise would make of it. */
const summedKinks = (celsius: Float64Array, noiseC: number): Float64Array => {
  const sums = new Float64Array(celsius.length + 1);
  const scale = Math.hypot(SMOOTH_BEND_C, noiseC * Math.sqrt(6));
  for (let i = 0; i < celsius.length; i++) {
    const isInside = i >= KINK_REACH && i + KINK_REACH < celsius.length;
    const bend = isInside
      ? celsius[i + KINK_REACH]! - 2 * celsius[i]! + celsius[i - KINK_REACH]!
      : 0;
    sums[i + 1] = sums[i]! + Math.max(0, Math.abs(bend) / scale - NO_KINK) ** 2;
  }
  return sums;
};

/** The grid on which these legs are looked for. */
export const gridOf = (trace: Trace, legs: readonly IntendedLeg[]): Grid => {
  const startSeconds = trace.summary.startSeconds ?? 0;
  const first = Math.max(0, lowerBound(trace.atSeconds, startSeconds - LEAD_SECONDS));
  const last = lastTellingSample(trace, legs);
  const thin = bridged(
    averaged(
      trace.atSeconds.subarray(first, last + 1),
      trace.celsius.subarray(first, last + 1),
      GRID_POINTS,
    ),
  );
  const count = thin.atSeconds.length;
  const spacing = (thin.atSeconds[count - 1]! - thin.atSeconds[0]!) / Math.max(1, count - 1);
  const averagedNoise =
    trace.summary.noiseC * Math.sqrt(Math.min(1, count / Math.max(1, last + 1 - first)));
  return {
    atSeconds: thin.atSeconds,
    celsius: thin.celsius,
    fits: new StretchFits(thin.atSeconds, thin.celsius),
    rippleC: Math.hypot(RIPPLE_C, averagedNoise),
    spacingSeconds: spacing,
    pointWeight: Math.min(1, spacing / WEIGHT_SECONDS),
    kinks: summedKinks(thin.celsius, averagedNoise),
    start: Math.min(count - 1, lowerBound(thin.atSeconds, startSeconds)),
    reachesEnd: last === trace.celsius.length - 1,
  };
};
