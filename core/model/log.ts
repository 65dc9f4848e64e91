import type { Source } from './source.ts';

/** Another measured place in the kiln; NaN where it gave no reading. */
export interface ZoneColumn {
  readonly channel: string;
  readonly celsius: Float64Array;
}

/**
 * A log as it was read: columns of the kept rows in file order, before any repair. Times may repeat
 * or run backwards here; a kept row always has a time and a usable main temperature, so
 * `atSeconds` and `celsius` hold finite numbers only.
 */
export interface Log {
  /** The account of reading; the caller of {@link readLog} adds the file's hash. */
  readonly source: Source;
  /** Seconds from the first kept row, by the log's own stamps. */
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  /** 1-based line of each kept row. */
  readonly line: Uint32Array;
  /** The setpoint the logger recorded, NaN where empty, or null if there is no such column. */
  readonly setpointC: Float64Array | null;
  /** The controller's output in percent of full power, NaN where empty, or null. */
  readonly outputPercent: Float64Array | null;
  readonly zones: readonly ZoneColumn[];
  /** Times of rows that were there but whose main thermocouple gave no reading, in file order. */
  readonly noReadingSeconds: Float64Array;
  /** 1-based line of each of these rows. */
  readonly noReadingLine: Uint32Array;
  /** ISO 8601 of the first kept row, with an offset only where the log gave one; null where it is not said. */
  readonly startInstant: string | null;
}
