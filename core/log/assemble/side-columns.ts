import type { RawColumns } from '../columns/raw-columns.ts';
import type { ZoneColumn } from '../../model/log.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { temperatureScale } from '../text/unit-text.ts';
import { gather } from './gather.ts';
import { withoutImpossible } from './reject-rows.ts';
import type { TableRead } from './table-read.ts';
import { toCelsius } from './to-celsius.ts';

/** What a log holds beside its main temperature, row by row. */
export interface Side {
  readonly setpointC: Float64Array | null;
  readonly outputPercent: Float64Array | null;
  readonly zones: readonly ZoneColumn[];
}

/** Readings of a unit in °C; the same array if they are already. */
export const celsiusOf = (values: Float64Array, unit: ChannelUnit): Float64Array => {
  if (unit === 'C') return values;
  const celsius = new Float64Array(values.length);
  for (let i = 0; i < values.length; i += 1) celsius[i] = toCelsius(values[i]!, unit);
  return celsius;
};

/** A reading of a temperature beside the main one; NaN where it was none. */
export const sideCelsius = (values: Float64Array, unit: ChannelUnit): Float64Array =>
  celsiusOf(withoutImpossible(values, unit), unit);

/** Outputs that never exceed one are shares of full power, or a relay that is on or off. */
export const asPercent = (values: Float64Array, isPercent: boolean): Float64Array => {
  const isShare = !isPercent && values.every((value) => Number.isNaN(value) || value <= 1);
  return isShare ? values.map((value) => value * 100) : values;
};

/** The column's unit where its header has one of its own, else that of the main temperature. */
const ownUnit = (table: TableRead, column: number, main: ChannelUnit): ChannelUnit => {
  const scale = temperatureScale(table.sample.units[column] ?? null);
  return scale === null || scale === 'mV' ? main : scale;
};

/** The columns beside the main one, for the rows that are kept. */
export const sideColumns = (
  table: TableRead,
  columns: RawColumns,
  rows: Uint32Array,
  unit: ChannelUnit,
): Side => {
  const { plan, sample } = table;
  const { setpoint, output, zones } = plan.roles;
  const valuesOf = (column: number): Float64Array =>
    gather(columns.values[plan.wanted.indexOf(column)]!, rows);
  const celsiusIn = (column: number): Float64Array =>
    sideCelsius(valuesOf(column), ownUnit(table, column, unit));
  const percentIn = (column: number): Float64Array =>
    asPercent(valuesOf(column), sample.units[column] === 'percent');
  return {
    setpointC: setpoint === null ? null : celsiusIn(setpoint.column),
    outputPercent: !output?.isPercent ? null : percentIn(output.column),
    zones: zones.map((column) => ({ channel: sample.names[column]!, celsius: celsiusIn(column) })),
  };
};
