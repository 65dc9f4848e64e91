import { lowerBound } from '../../numeric/search.ts';
import { mainSeries } from '../columns/find-series.ts';
import { RawColumns, READ } from '../columns/raw-columns.ts';

/** One channel of a long table: its rows' times and values in file order, NaN where unread. */
export interface Series {
  readonly name: string;
  readonly time: Float64Array;
  readonly value: Float64Array;
}

export interface Parted {
  /** The rows of the main channel alone. */
  readonly main: RawColumns;
  readonly name: string;
  readonly others: readonly Series[];
}

/** The rows of each channel in file order; channels beyond the last have none. */
const rowsBySeries = (columns: RawColumns, count: number): readonly Uint32Array[] => {
  const lengths = new Uint32Array(count + 1);
  for (let row = 0; row < columns.length; row += 1) {
    const series = columns.series[row]!;
    if (series <= count) lengths[series]! += 1;
  }
  const rows = Array.from(lengths, (length) => new Uint32Array(length));
  lengths.fill(0);
  for (let row = 0; row < columns.length; row += 1) {
    const series = columns.series[row]!;
    if (series > count) continue;
    rows[series]![lengths[series]!] = row;
    lengths[series]! += 1;
  }
  return rows;
};

/** One channel's times and values. */
const seriesOf = (name: string, columns: RawColumns, rows: Uint32Array): Series => {
  const time = new Float64Array(rows.length);
  const value = new Float64Array(rows.length);
  const main = columns.values[0]!;
  for (let i = 0; i < rows.length; i += 1) {
    const row = rows[i]!;
    time[i] = columns.time[row]!;
    value[i] = columns.state[row] === READ ? main[row]! : Number.NaN;
  }
  return { name, time, value };
};

const onlyRows = (columns: RawColumns, rows: Uint32Array): RawColumns => {
  const kept = new RawColumns(columns.values.length, rows.length, false);
  rows.forEach((row, index) => {
    kept.add(columns.line[row]!, columns.state[row]!);
    kept.time[index] = columns.time[row]!;
    columns.values.forEach((column, wanted) => {
      kept.values[wanted]![index] = column[row]!;
    });
    kept.noteOffset(index, columns.offsetAt(row));
    const unit = columns.units.of(row);
    if (unit !== undefined) kept.units.note(index, unit, rows.length);
  });
  return kept;
};

/**
 * Parts a long table into its channels. The main one keeps its rows, rejected ones included; rows
 * whose channel is not known (their line could not be split) go with it, so that none is lost.
 * `given` is the channel that the person names as the main one.
 */
export const partSeries = (
  columns: RawColumns,
  labels: ReadonlyMap<string, number>,
  isUsable: (series: Series) => boolean,
  given: string | null = null,
): Parted => {
  const names = [...labels.keys()];
  const rows = rowsBySeries(columns, names.length);
  const series = names.map((name, index) => seriesOf(name, columns, rows[index]!));
  const usable = series.filter(isUsable).map(({ name }) => name);
  const name = given ?? mainSeries(usable.length > 0 ? usable : names) ?? '';
  const main = labels.get(name) ?? 0;
  return {
    main: onlyRows(columns, rows[main]!),
    name,
    others: series.filter((one) => one.name !== name),
  };
};

/** The places of a channel's readings in order of time; of equal times, in that of the file. */
const orderOf = ({ time, value }: Series): Uint32Array => {
  const places = new Uint32Array(time.length);
  let count = 0;
  let isRising = true;
  for (let i = 0; i < time.length; i += 1) {
    if (Number.isNaN(time[i]! + value[i]!)) continue;
    if (count > 0 && time[i]! < time[places[count - 1]!]!) isRising = false;
    places[count] = i;
    count += 1;
  }
  const order = places.subarray(0, count);
  return isRising ? order : order.sort((one, other) => time[one]! - time[other]! || one - other);
};

/**
 * The values of another channel at the main channel's times: of the reading at the same time, the
 * k-th where a time is repeated; else of the nearest within `within` seconds; NaN if there is none.
 */
export const alignSeries = (series: Series, at: Float64Array, within: number): Float64Array => {
  const order = orderOf(series);
  const times = new Float64Array(order.length);
  for (let i = 0; i < order.length; i += 1) times[i] = series.time[order[i]!]!;
  let repeat = 0;
  return at.map((time, row) => {
    repeat = row > 0 && at[row - 1] === time ? repeat + 1 : 0;
    const first = lowerBound(times, time);
    const same = first + repeat;
    if (times[same] === time) return series.value[order[same]!]!;
    if (times[first] === time) return series.value[order[first]!]!;
    const before = first - 1;
    const gapBefore = before >= 0 ? time - times[before]! : Infinity;
    const gapAfter = first < times.length ? times[first]! - time : Infinity;
    if (Math.min(gapBefore, gapAfter) > within) return Number.NaN;
    return series.value[order[gapBefore <= gapAfter ? before : first]!]!;
  });
};
