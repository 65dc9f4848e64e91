import type { Obtained, Provenance } from './published-table.ts';

/** The tolerance is constantC + perDegree·(t − sinceC) over a range of t, plus or minus. */
export interface ToleranceRange {
  readonly fromC: number;
  readonly toC: number;
  readonly constantC: number;
  readonly perDegree: number;
  readonly sinceC: number;
}

/** A tolerance class of one or several thermocouple types, as printed: new wire, delivered state. */
export interface ToleranceRow {
  readonly types: readonly ('B' | 'E' | 'J' | 'K' | 'N' | 'R' | 'S' | 'T')[];
  readonly class: 'class-1' | 'class-2' | 'standard';
  /** In order of temperature. A printed "the greater of" is split where the two cross. */
  readonly ranges: readonly ToleranceRange[];
  readonly obtained?: Obtained;
}

const constant = (fromC: number, toC: number, constantC: number): ToleranceRange => ({
  fromC,
  toC,
  constantC,
  perDegree: 0,
  sinceC: 0,
});

const share = (fromC: number, toC: number, perDegree: number): ToleranceRange => ({
  fromC,
  toC,
  constantC: 0,
  perDegree,
  sinceC: 0,
});

export const IEC_60584_PROVENANCE: Provenance = {
  title: 'Thermocouples — Part 1: EMF specifications and tolerances',
  publisher: 'International Electrotechnical Commission, IEC 60584-1',
  edition: 'third, 2013',
  table: 'tolerance classes of thermocouples (class 1 and class 2)',
  obtained: 'seen',
  obtainedNote: 'types K, N, R and S seen; the edition and the rows marked so are from memory',
};

/** Sub-zero ranges are left out. */
export const IEC_60584_TOLERANCES: readonly ToleranceRow[] = [
  {
    types: ['K', 'N'],
    class: 'class-1',
    ranges: [constant(0, 375, 1.5), share(375, 1000, 0.004)],
  },
  {
    types: ['K', 'N'],
    class: 'class-2',
    ranges: [constant(0, 333, 2.5), share(333, 1200, 0.0075)],
  },
  {
    types: ['R', 'S'],
    class: 'class-1',
    ranges: [
      constant(0, 1100, 1),
      { fromC: 1100, toC: 1600, constantC: 1, perDegree: 0.003, sinceC: 1100 },
    ],
  },
  {
    types: ['R', 'S'],
    class: 'class-2',
    ranges: [constant(0, 600, 1.5), share(600, 1600, 0.0025)],
  },
  { types: ['B'], class: 'class-2', ranges: [share(600, 1700, 0.0025)], obtained: 'memory' },
  {
    types: ['J'],
    class: 'class-1',
    ranges: [constant(0, 375, 1.5), share(375, 750, 0.004)],
    obtained: 'memory',
  },
  {
    types: ['J'],
    class: 'class-2',
    ranges: [constant(0, 333, 2.5), share(333, 750, 0.0075)],
    obtained: 'memory',
  },
  {
    types: ['E'],
    class: 'class-1',
    ranges: [constant(0, 375, 1.5), share(375, 800, 0.004)],
    obtained: 'memory',
  },
  {
    types: ['E'],
    class: 'class-2',
    ranges: [constant(0, 333, 2.5), share(333, 900, 0.0075)],
    obtained: 'memory',
  },
  {
    types: ['T'],
    class: 'class-1',
    ranges: [constant(0, 125, 0.5), share(125, 350, 0.004)],
    obtained: 'memory',
  },
  {
    types: ['T'],
    class: 'class-2',
    ranges: [constant(0, 133, 1), share(133, 350, 0.0075)],
    obtained: 'memory',
  },
];
