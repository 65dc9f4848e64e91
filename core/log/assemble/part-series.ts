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

const rowsBySeries = (columns: RawColumns, count: number): number[][] => {
  const rows: number[][] = Array.from({ length: count + 1 }, () => []);
  for (let row = 0; row < columns.length; row += 1) rows[columns.series[row]!]?.push(row);
  return rows;
};

const onlyRows = (columns: RawColumns, rows: readonly number[]): RawColumns => {
  const kept = new RawColumns(columns.values.length, rows.length, false);
  rows.forEach((row, index) => {
    kept.add(columns.line[row]!, columns.state[row]!);
    kept.time[index] = columns.time[row]!;
    columns.values.forEach((column, wanted) => {
      kept.values[wanted]![index] = column[row]!;
    });
    kept.noteOffset(index, columns.offsetAt(row));
    const unit = columns.unitOfRow.get(row);
    if (unit !== undefined) kept.unitOfRow.set(index, unit);
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
  const series = names.map((name, index) => ({
    name,
    time: Float64Array.from(rows[index]!, (row) => columns.time[row]!),
    value: Float64Array.from(rows[index]!, (row) =>
      columns.state[row] === READ ? columns.values[0]![row]! : Number.NaN,
    ),
  }));
  const usable = series.filter(isUsable).map(({ name }) => name);
  const name = given ?? mainSeries(usable.length > 0 ? usable : names) ?? '';
  const main = labels.get(name) ?? 0;
  return {
    main: onlyRows(columns, rows[main]!),
    name,
    others: series.filter((one) => one.name !== name),
  };
};

/**
 * The values of another channel at the main channel's times: of the reading at the same time, the
 * k-th where a time is repeated; else of the nearest within `within` seconds; NaN if there is none.
 */
export const alignSeries = (series: Series, at: Float64Array, within: number): Float64Array => {
  const order = [...series.time.keys()]
    .filter((row) => !Number.isNaN(series.time[row]! + series.value[row]!))
    .sort((one, other) => series.time[one]! - series.time[other]!);
  const times = Float64Array.from(order, (row) => series.time[row]!);
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
