/**
 * How a printed value came into this project: `seen` on a stored public page, or `memory`, recalled
 * and still to be compared with print.
 */
export type Obtained = 'seen' | 'memory';

/** Where a table was printed. */
export interface Provenance {
  readonly title: string;
  readonly publisher: string;
  readonly edition: string;
  /** Which table or column of the publication. */
  readonly table: string;
  /** How its rows were obtained, unless a row says otherwise. */
  readonly obtained: Obtained;
  /** What else there is to know about the copy: agreement of readings, gaps. */
  readonly obtainedNote: string;
}

/**
 * One cone's end points in °C, in the order of the table's rates; null where the table is blank.
 * The cone's name is as printed (half cones as `5.5`), because the tables run beyond the cones that
 * the analysis knows.
 */
export type EndPointRow = readonly [
  cone: string,
  endPointsC: readonly (number | null)[],
  obtained?: Obtained,
];

/** End points of pyrometric cones against the rate of climb over the last 100 °C. */
export interface EndPointTable extends Provenance {
  readonly ratesCPerHour: readonly number[];
  readonly rows: readonly EndPointRow[];
}
