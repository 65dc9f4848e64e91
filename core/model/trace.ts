import { z } from 'zod';
import type { Seconds } from '../units.ts';
import type { ZoneColumn } from './log.ts';
import { zCelsius, zCelsiusDelta, zCelsiusPerHour, zCount, zSeconds, zSpan } from './scalars.ts';

export const REPAIR_KINDS = [
  'spike',
  'dropout',
  'out-of-range',
  'duplicate',
  'out-of-order',
  'clock-jump',
] as const;

export const zRepair = z.strictObject({
  kind: z.enum(REPAIR_KINDS),
  fromSeconds: zSeconds,
  toSeconds: zSeconds,
  samples: zCount,
  /** Of a clock-jump: how far the clock was moved, forward positive. */
  movedSeconds: zSeconds.optional(),
});
export type Repair = z.infer<typeof zRepair>;

export const zTraceLeg = z.strictObject({
  kind: z.enum(['ramp', 'hold', 'cooling']),
  startSeconds: zSeconds,
  endSeconds: zSeconds,
  startC: zCelsius,
  endC: zCelsius,
  rateCPerHour: zCelsiusPerHour,
});
export type TraceLeg = z.infer<typeof zTraceLeg>;

/** What the document says of the trace; the full columns travel beside it as a {@link Trace}. */
export const zTraceSummary = z.strictObject({
  samples: zCount,
  startInstant: z.string().nullable(),
  durationSeconds: zSeconds,
  medianIntervalSeconds: zSeconds,
  noiseC: zCelsiusDelta,
  /** The step to which the logger rounds, as far as the readings show one; 0 if none shows. */
  resolutionC: zCelsiusDelta,
  minC: zCelsius,
  peakC: zCelsius,
  peakAtSeconds: zSeconds,
  startSeconds: zSeconds.nullable(),
  offSeconds: zSeconds.nullable(),
  gaps: z.array(zSpan),
  /** Stretches in which rows came but the main thermocouple gave no reading. */
  noReadings: z.array(zSpan),
  repairs: z.array(zRepair),
  legs: z.array(zTraceLeg),
});
export type TraceSummary = z.infer<typeof zTraceSummary>;

/** A sample that was taken out of the trace, kept so that it can be shown. */
export interface RemovedSample {
  readonly atSeconds: Seconds;
  readonly celsius: number;
  readonly kind: Repair['kind'];
}

/**
 * One firing's temperature record, repaired and in order. Every array has the same length;
 * `atSeconds` strictly increases from 0 and `celsius` is finite. A reading that was taken out is
 * absent here and listed in `removed`: a hole stays a hole.
 */
export interface Trace {
  readonly summary: TraceSummary;
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  /** The local-regression value at each sample. */
  readonly smoothC: Float64Array;
  readonly slopeCPerHour: Float64Array;
  /** One standard error of `slopeCPerHour`. */
  readonly slopeErrorCPerHour: Float64Array;
  readonly setpointC: Float64Array | null;
  readonly outputPercent: Float64Array | null;
  readonly zones: readonly ZoneColumn[];
  readonly removed: readonly RemovedSample[];
  /**
   * Index of the first sample of a second log of the same load: no line is drawn to the sample
   * before it, for nobody looked in between. Left out where one log is all there is.
   */
  readonly joinedAt?: number;
}
