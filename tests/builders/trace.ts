/**
 * Makes small {@link Trace} objects for tests without going through a log: the temperature is
 * piecewise linear between given points, so every expected value can be worked out by hand.
 */
import type { Span } from '../../core/model/scalars.ts';
import type { Trace, TraceLeg, TraceSummary } from '../../core/model/trace.ts';
import { celsius, celsiusDelta, celsiusPerHour, seconds } from '../../core/units.ts';
import { seededRandom } from './random.ts';

/** A corner of the curve: minutes from the first sample, and °C. */
export type CurvePoint = readonly [atMinutes: number, celsius: number];

/** One stretch of a firing written as a person would say it. */
export type Stretch =
  { readonly rateCPerHour: number; readonly toC: number } | { readonly holdMinutes: number };

/**
 * Corners of a firing that starts at `startC`: a rate is a magnitude, its direction follows the
 * temperatures. `firing(20, { rateCPerHour: 100, toC: 1200 }, { holdMinutes: 10 })`.
 */
export const firing = (startC: number, ...stretches: readonly Stretch[]): CurvePoint[] => {
  const points: CurvePoint[] = [[0, startC]];
  let atMinutes = 0;
  let atC = startC;
  for (const stretch of stretches) {
    if ('holdMinutes' in stretch) {
      atMinutes += stretch.holdMinutes;
    } else {
      atMinutes += (Math.abs(stretch.toC - atC) / stretch.rateCPerHour) * 60;
      atC = stretch.toC;
    }
    points.push([atMinutes, atC]);
  }
  return points;
};

/** The corners themselves as columns, unsampled: what the curve is without a logger. */
export const curveFrom = (
  points: readonly CurvePoint[],
): { atSeconds: Float64Array; celsius: Float64Array } => ({
  atSeconds: Float64Array.from(points, ([atMinutes]) => atMinutes * 60),
  celsius: Float64Array.from(points, ([, atC]) => atC),
});

export interface TraceOptions {
  /** Seconds between samples; 60 unless told. */
  readonly intervalSeconds?: number;
  /** Standard deviation of normal noise; 0 unless told. */
  readonly noiseC?: number;
  /** Step to which readings are rounded; 0 (none) unless told. */
  readonly resolutionC?: number;
  /** Reading minus truth at a true temperature: a couple that errs. */
  readonly errorC?: (trueC: number) => number;
  /** Spans without samples. */
  readonly gaps?: readonly { readonly fromMinutes: number; readonly toMinutes: number }[];
  readonly seed?: number;
}

/** Slower than this a stretch counts as a hold in the builder's legs. */
const HOLD_BELOW_C_PER_HOUR = 5;

const kindOf = (rateCPerHour: number): TraceLeg['kind'] => {
  if (Math.abs(rateCPerHour) < HOLD_BELOW_C_PER_HOUR) return 'hold';
  return rateCPerHour > 0 ? 'ramp' : 'cooling';
};

/** The legs of a piecewise-linear curve: one a stretch. */
export const legsOf = (points: readonly CurvePoint[]): TraceLeg[] =>
  points.slice(1).map(([endMinutes, endC], index) => {
    const [startMinutes, startC] = points[index]!;
    const rate = ((endC - startC) / (endMinutes - startMinutes)) * 60;
    return {
      kind: kindOf(rate),
      startSeconds: seconds(startMinutes * 60),
      endSeconds: seconds(endMinutes * 60),
      startC: celsius(startC),
      endC: celsius(endC),
      rateCPerHour: celsiusPerHour(rate),
    };
  });

interface Columns {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  readonly slopeCPerHour: Float64Array;
}

/** Regular samples of the curve, its last corner included, those inside a gap left out. */
const sample = (points: readonly CurvePoint[], options: TraceOptions): Columns => {
  const legs = legsOf(points);
  const endSeconds = legs.at(-1)!.endSeconds;
  const interval = options.intervalSeconds ?? 60;
  const inGap = (at: number): boolean =>
    (options.gaps ?? []).some((gap) => at > gap.fromMinutes * 60 && at < gap.toMinutes * 60);
  const times: number[] = [];
  for (let at = 0; at < endSeconds; at += interval) if (!inGap(at)) times.push(at);
  times.push(endSeconds);
  let leg = 0;
  const legAt = times.map((at) => {
    while (leg < legs.length - 1 && at >= legs[leg]!.endSeconds) leg += 1;
    return legs[leg]!;
  });
  return {
    atSeconds: Float64Array.from(times),
    celsius: Float64Array.from(
      times,
      (at, i) => legAt[i]!.startC + (legAt[i]!.rateCPerHour * (at - legAt[i]!.startSeconds)) / 3600,
    ),
    slopeCPerHour: Float64Array.from(legAt, (own) => own.rateCPerHour),
  };
};

/** What the logger writes for the true temperatures: erring couple, noise, rounding. */
const asRead = (trueC: Float64Array, options: TraceOptions): Float64Array => {
  const random = seededRandom(options.seed ?? 1);
  const step = options.resolutionC ?? 0;
  return trueC.map((truth) => {
    const noise = options.noiseC === undefined ? 0 : options.noiseC * random.normal();
    const reading = truth + (options.errorC?.(truth) ?? 0) + noise;
    return step > 0 ? Math.round(reading / step) * step : reading;
  });
};

const gapsOf = (options: TraceOptions): Span[] =>
  (options.gaps ?? []).map((gap) => ({
    fromSeconds: seconds(gap.fromMinutes * 60),
    toSeconds: seconds(gap.toMinutes * 60),
  }));

const summaryOf = (
  points: readonly CurvePoint[],
  columns: Columns,
  readC: Float64Array,
  options: TraceOptions,
): TraceSummary => {
  const legs = legsOf(points);
  const last = legs.at(-1)!;
  const peakIndex = readC.reduce((best, value, i) => (value > readC[best]! ? i : best), 0);
  return {
    samples: readC.length,
    startInstant: null,
    durationSeconds: last.endSeconds,
    medianIntervalSeconds: seconds(options.intervalSeconds ?? 60),
    noiseC: celsiusDelta(options.noiseC ?? 0),
    resolutionC: celsiusDelta(options.resolutionC ?? 0),
    minC: celsius(readC.reduce((least, value) => Math.min(least, value), Infinity)),
    peakC: celsius(readC[peakIndex]!),
    peakAtSeconds: seconds(columns.atSeconds[peakIndex]!),
    startSeconds: legs.find((leg) => leg.kind === 'ramp')?.startSeconds ?? null,
    offSeconds: last.kind === 'cooling' ? last.startSeconds : null,
    gaps: gapsOf(options),
    noReadings: [],
    repairs: [],
    legs,
  };
};

/** A trace whose true temperature runs straight from point to point; slopes are the true ones. */
export const traceFrom = (points: readonly CurvePoint[], options: TraceOptions = {}): Trace => {
  if (points.length < 2) throw new Error('a curve needs two points');
  const columns = sample(points, options);
  const readC = asRead(columns.celsius, options);
  return {
    summary: summaryOf(points, columns, readC, options),
    atSeconds: columns.atSeconds,
    celsius: readC,
    smoothC: asRead(columns.celsius, options.errorC ? { errorC: options.errorC } : {}),
    slopeCPerHour: columns.slopeCPerHour,
    slopeErrorCPerHour: new Float64Array(readC.length).fill(0.5),
    setpointC: null,
    outputPercent: null,
    zones: [],
    removed: [],
  };
};
