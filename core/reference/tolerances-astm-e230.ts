import type { Provenance } from './published-table.ts';
import type { ToleranceRow } from './tolerances-iec-60584.ts';

export const ASTM_E230_PROVENANCE: Provenance = {
  title:
    'Standard Specification for Temperature-Electromotive Force (emf) Tables for Thermocouples',
  publisher: 'ASTM International, ASTM E230/E230M',
  edition: 'not known',
  table: 'initial tolerances of thermocouples, standard grade',
  obtained: 'memory',
  obtainedNote: 'types K and N seen (2.2 °C or 0.75 %); upper limits and the other types recalled',
};

/**
 * Standard grade, from 0 °C. A printed "the greater of" is split where the two cross, to the
 * nearest degree.
 */
export const ASTM_E230_TOLERANCES: readonly ToleranceRow[] = [
  {
    types: ['K', 'N'],
    class: 'standard',
    ranges: [
      { fromC: 0, toC: 293, constantC: 2.2, perDegree: 0, sinceC: 0 },
      { fromC: 293, toC: 1260, constantC: 0, perDegree: 0.0075, sinceC: 0 },
    ],
    obtained: 'seen',
  },
  {
    types: ['R', 'S'],
    class: 'standard',
    ranges: [
      { fromC: 0, toC: 600, constantC: 1.5, perDegree: 0, sinceC: 0 },
      { fromC: 600, toC: 1480, constantC: 0, perDegree: 0.0025, sinceC: 0 },
    ],
  },
  {
    types: ['B'],
    class: 'standard',
    ranges: [{ fromC: 870, toC: 1700, constantC: 0, perDegree: 0.005, sinceC: 0 }],
  },
  {
    types: ['J'],
    class: 'standard',
    ranges: [
      { fromC: 0, toC: 293, constantC: 2.2, perDegree: 0, sinceC: 0 },
      { fromC: 293, toC: 760, constantC: 0, perDegree: 0.0075, sinceC: 0 },
    ],
  },
  {
    types: ['E'],
    class: 'standard',
    ranges: [
      { fromC: 0, toC: 340, constantC: 1.7, perDegree: 0, sinceC: 0 },
      { fromC: 340, toC: 870, constantC: 0, perDegree: 0.005, sinceC: 0 },
    ],
  },
  {
    types: ['T'],
    class: 'standard',
    ranges: [
      { fromC: 0, toC: 133, constantC: 1, perDegree: 0, sinceC: 0 },
      { fromC: 133, toC: 370, constantC: 0, perDegree: 0.0075, sinceC: 0 },
    ],
  },
];
