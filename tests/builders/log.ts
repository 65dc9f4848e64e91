import type { Log } from '../../core/model/log.ts';
import type { Source } from '../../core/model/source.ts';

/** The account of a plain two-column log, for tests that begin after reading. */
export const plainSource = (rows: number): Source => ({
  fileName: 'test.csv',
  byteLength: 0,
  sha256: null,
  format: 'delimited',
  encoding: 'utf-8',
  delimiter: ',',
  decimalMark: '.',
  headerLine: 1,
  rowsRead: rows,
  rowsKept: rows,
  rowsRejected: 0,
  rejected: [],
  time: { columns: ['time'], kind: 'elapsed', pattern: 'elapsed-seconds', assumptions: [] },
  channels: [{ name: 'temperature', column: 1, unit: 'C', role: 'temperature', chosen: true }],
  decisions: [],
  warnings: [],
});

/** A log of the given columns, as a reader would have made it. */
export const logOf = (
  columns: Pick<Log, 'atSeconds' | 'celsius'>,
  more: Partial<Omit<Log, 'atSeconds' | 'celsius'>> = {},
): Log => ({
  source: plainSource(columns.celsius.length),
  atSeconds: columns.atSeconds,
  celsius: columns.celsius,
  line: Uint32Array.from(columns.celsius, (_, i) => i + 2),
  setpointC: null,
  outputPercent: null,
  zones: [],
  noReadingSeconds: new Float64Array(),
  noReadingLine: new Uint32Array(),
  startInstant: null,
  ...more,
});
