import { READ, stateOf, type RawColumns } from '../columns/raw-columns.ts';
import { columnNamed } from '../columns/sample.ts';
import { timeColumnsOf } from '../columns/time-plan.ts';
import { MIN_ROWS } from '../limits.ts';
import type { Log } from '../../model/log.ts';
import { Refusal } from '../../model/refusal.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { gather } from './gather.ts';
import { listRejected } from './listed-rows.ts';
import { listChannels } from './list-channels.ts';
import { partSeries, type Parted } from './part-series.ts';
import { rejectUntimed } from './reject-rows.ts';
import { resolveTime, type ResolvedTime } from './resolve-time.ts';
import { mainCelsius, settleReadings } from './settle-readings.ts';
import { sideColumns } from './side-columns.ts';
import type { Scale } from './scale.ts';
import { accountForChannels, sideSeries } from './side-series.ts';
import type { TableRead } from './table-read.ts';
import { warnOfCourse } from './warn-of-course.ts';

const keptRows = (columns: RawColumns): Uint32Array => {
  const kept = new Uint32Array(columns.length);
  let count = 0;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ) {
      kept[count] = row;
      count += 1;
    }
  }
  return kept.subarray(0, count);
};

const refuseTooFew = (
  columns: RawColumns,
  kept: number,
  lineOf: (number: number) => number,
): void => {
  if (kept >= MIN_ROWS) return;
  if (columns.length < MIN_ROWS) {
    const rows = columns.length === 0 ? 'no rows' : 'only one row';
    throw new Refusal(
      columns.length === 0 ? 'header-only' : 'too-few-rows',
      `there ${columns.length === 0 ? 'are' : 'is'} ${rows} of readings; a firing needs at least ` +
        'two times with a temperature',
      columns.length === 0 ? null : lineOf(columns.line[0]!),
    );
  }
  const untimed = stateOf('unreadable-time');
  const isUntimed = columns.state.subarray(0, columns.length).every((state) => state === untimed);
  throw new Refusal(
    kept === 1 ? 'too-few-rows' : isUntimed ? 'no-time' : 'no-temperature',
    `of ${columns.length} rows ${kept === 0 ? 'none has' : 'only one has'} both a time and a ` +
      'temperature that can be read; look at the lines, or name the columns',
    lineOf(columns.line[0]!),
  );
};

/** @throws Refusal `no-time` where every row has the same time: nothing then tells any rate. */
const refuseStopped = (
  seconds: Float64Array,
  rows: Uint32Array,
  main: RawColumns,
  { lineOf }: TableRead,
): void => {
  const first = seconds[rows[0]!]!;
  for (let i = 1; i < rows.length; i += 1) if (seconds[rows[i]!] !== first) return;
  throw new Refusal(
    'no-time',
    `the times never move: all ${rows.length} rows have the same one; give the seconds between ` +
      'readings if they came at a steady interval',
    lineOf(main.line[rows[0]!]!),
  );
};

/** What lies beside the main temperature: columns of the same rows, or other channels. */
const beside = (
  table: TableRead,
  parted: Parted | null,
  main: RawColumns,
  rows: Uint32Array,
  time: ResolvedTime,
  scale: Scale,
) =>
  parted === null
    ? sideColumns(table, main, rows, scale)
    : sideSeries(
        parted,
        ['clock', 'clock-parts'].includes(table.plan.time.form),
        rows,
        time,
        scale,
        table,
      );

const startTimes = (seconds: Float64Array, rows: Uint32Array): Float64Array => {
  const at = gather(seconds, rows);
  const [zero] = at;
  if (zero !== 0) for (let i = 0; i < at.length; i += 1) at[i] = at[i]! - zero!;
  return at;
};

const linesOf = (main: RawColumns, rows: Uint32Array, { lineOf }: TableRead): Uint32Array => {
  const lines = new Uint32Array(rows.length);
  for (let i = 0; i < rows.length; i += 1) lines[i] = lineOf(main.line[rows[i]!]!);
  return lines;
};

/** When the main thermocouple gave nothing, and on which lines. */
const noReadings = (
  main: RawColumns,
  time: ResolvedTime,
  zero: number,
  { lineOf }: TableRead,
): Pick<Log, 'noReadingSeconds' | 'noReadingLine'> => {
  const noReading = stateOf('no-reading');
  const rows: number[] = [];
  for (let row = 0; row < main.length; row += 1) {
    if (main.state[row] === noReading && Number.isFinite(time.seconds[row]!)) rows.push(row);
  }
  return {
    noReadingSeconds: Float64Array.from(rows, (row) => time.seconds[row]! - zero),
    noReadingLine: Uint32Array.from(rows, (row) => lineOf(main.line[row]!)),
  };
};

/** The channel that the person names as the kiln's temperature, if it is no column. */
const givenSeries = ({ series, sample, decisions }: TableRead): string | null => {
  const wanted = decisions.temperatureColumn;
  if (wanted === undefined || columnNamed(sample, wanted) !== null) return null;
  if (series.has(wanted)) return wanted;
  throw new Refusal(
    'bad-option',
    `there is no channel “${wanted}”; the channels are ${quotedNames([...series.keys()])}`,
  );
};

const partedOf = (table: TableRead): Parted | null => {
  const { plan, series, columns, account } = table;
  if (plan.seriesColumn === null) return null;
  const isUsable = ({ value }: { value: Float64Array }): boolean =>
    value.some((reading) => !Number.isNaN(reading));
  const given = givenSeries(table);
  const parted = partSeries(columns, series, isUsable, given);
  if (given !== null) account.decide('series', given, 'given', 1);
  else {
    account.decide('series', parted.name, series.size === 1 ? 'only-one' : 'name-and-order', 0.7);
  }
  accountForChannels(parted, table.decisions, account);
  if (series.size > 1) account.warn('other-series');
  return parted;
};

/**
 * Makes the log of a table that was read: decides what only whole columns can tell (missing
 * readings written as numbers, the unit, what bare times count, midnights), and closes the account.
 *
 * @throws Refusal if too few rows hold both a time and a temperature, or millivolts of no known couple.
 */
export const assembleLog = (table: TableRead): Log => {
  const { plan, sample, account } = table;
  const parted = partedOf(table);
  const main = parted?.main ?? table.columns;
  const { scale, riseC } = settleReadings(table, parted, main);
  const time = resolveTime(plan, sample, main, riseC, table.decisions, account);
  rejectUntimed(main, time);
  const rows = keptRows(main);
  refuseTooFew(main, rows.length, table.lineOf);
  refuseStopped(time.seconds, rows, main, table);
  const zero = time.seconds[rows[0]!]!;
  const side = beside(table, parted, main, rows, time, scale);
  const celsius = mainCelsius(main, rows, scale);
  const { count, listed } = listRejected(main, table);
  warnOfCourse(main, rows, celsius, count, account);
  const instant = time.instantOf(rows[0]!);
  return {
    source: {
      ...table.source,
      sha256: null,
      rowsRead: main.length,
      rowsKept: rows.length,
      rowsRejected: count,
      rejected: listed,
      time: {
        columns: timeNames(table),
        kind: time.kind,
        pattern: time.pattern,
        assumptions: account.assumptions(),
      },
      channels: listChannels(table, parted, scale.unit),
      decisions: account.decisions(),
      warnings: account.warnings(),
    },
    atSeconds: startTimes(time.seconds, rows),
    celsius,
    line: linesOf(main, rows, table),
    ...side,
    ...noReadings(main, time, zero, table),
    startInstant: instant,
  };
};

const timeNames = ({ plan, sample }: TableRead): string[] =>
  timeColumnsOf(plan.time).map((column) => sample.names[column] ?? '');
