/** The times of all rows in seconds on one clock, and what instant that clock's zero is. */
export interface ResolvedTime {
  readonly seconds: Float64Array;
  readonly kind: 'instant' | 'elapsed';
  readonly pattern: string;
  /** The instant of a row as ISO 8601, or null where the log does not say it. */
  readonly instantOf: (row: number) => string | null;
}
