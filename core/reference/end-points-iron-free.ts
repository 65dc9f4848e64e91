import type { EndPointTable } from './published-table.ts';

/**
 * The chart has no iron-free cone 2.
 */
export const IRON_FREE_END_POINTS: EndPointTable = {
  title: 'Equivalent temperatures of iron-free self-supporting pyrometric cones',
  publisher: "the cone maker's published end-point chart",
  edition: '2016',
  table: 'self-supporting cones, iron-free, 010–3 without 2; °C per hour over the last 100 °C',
  obtained: 'memory',
  obtainedNote: 'the rows marked were seen, the others are from memory',
  ratesCPerHour: [15, 60, 150],
  rows: [
    ['010', [871, 886, 893], 'seen'],
    ['09', [899, 919, 928], 'seen'],
    ['08', [924, 946, 957], 'seen'],
    ['07', [953, 971, 982]],
    ['06', [969, 991, 998]],
    ['05.5', [990, 1012, 1021]],
    ['05', [1013, 1037, 1046]],
    ['04', [1043, 1061, 1069]],
    ['03', [1066, 1088, 1093]],
    ['02', [1084, 1105, 1115]],
    ['01', [1101, 1123, 1134]],
    ['1', [1119, 1139, 1148]],
    ['3', [1130, 1154, 1162]],
  ],
};
