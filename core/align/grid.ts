import type { Trace } from '../model/trace.ts';
import { StretchFits } from '../trace/fits.ts';
import { lowerBound } from '../trace/search.ts';
import { averaged } from '../trace/thin.ts';

/** The search lays legs on at most this many averaged points (chosen: 2–4 minutes of a firing). */
const GRID_POINTS = 420;
/** Time before heating begins that the search still looks at: a start may be guessed late. */
const LEAD_SECONDS = 1800;
/** Natural cooling below this says nothing of the legs any more (chosen). */
const COLD_C = 150;
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
  /** What one point counts for: points close together carry correlated ripple. */
  readonly pointWeight: number;
  /** Index of the point at which heating begins, as the trace shows it. */
  readonly start: number;
  /** The last sample of the record lies within the grid: nothing was cut off as cold. */
  readonly reachesEnd: boolean;
}

/** Where the record stops mattering: the last time the kiln, having been hot, is above cold. */
const lastWarmSample = (trace: Trace): number => {
  const last = trace.celsius.length - 1;
  if (trace.celsius[last]! > COLD_C || trace.summary.peakC <= COLD_C) return last;
  const cold = trace.smoothC.findLastIndex((value) => value > COLD_C);
  return cold < 0 ? last : Math.min(last, cold + 1);
};

export const gridOf = (trace: Trace): Grid => {
  const startSeconds = trace.summary.startSeconds ?? 0;
  const first = Math.max(0, lowerBound(trace.atSeconds, startSeconds - LEAD_SECONDS));
  const last = lastWarmSample(trace);
  const thin = averaged(
    trace.atSeconds.subarray(first, last + 1),
    trace.celsius.subarray(first, last + 1),
    GRID_POINTS,
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
    pointWeight: Math.min(1, spacing / WEIGHT_SECONDS),
    start: Math.min(count - 1, lowerBound(thin.atSeconds, startSeconds)),
    reachesEnd: last === trace.celsius.length - 1,
  };
};
