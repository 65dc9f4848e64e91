import type { RawColumns } from '../columns/raw-columns.ts';
import type { ZoneColumn } from '../../model/log.ts';
import type { ChannelUnit, CoupleType } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { coupleTypeFor, coupleTypeIn } from '../text/couple-text.ts';
import type { Preamble } from '../text/preamble.ts';
import { isVoltage, temperatureScale } from '../text/unit-text.ts';
import { gather } from './gather.ts';
import { withoutImpossible } from './reject-rows.ts';
import type { TableRead } from './table-read.ts';
import { celsiusIn, type Scale } from './scale.ts';
import { toCelsius } from './to-celsius.ts';

/** Below this no temperature exists, and just at it no kiln and no logger, °C. */
const LEAST_C = -273.1;

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

/** Readings of temperatures beside the main one, for `rows`; NaN where there was none. */
export const sideCelsius = (
  values: Float64Array,
  scale: Scale,
  rows: Uint32Array,
  noReading: ReadonlySet<number>,
): Float64Array => {
  const celsius = withoutImpossible(values, noReading, scale.unit);
  for (let i = 0; i < celsius.length; i += 1) {
    const reading = celsiusIn(scale, celsius[i]!, rows[i]!);
    celsius[i] = reading < LEAST_C ? Number.NaN : reading;
  }
  return celsius;
};

/** The scale of a column or channel by name: its own unit, else the main one's. */
export const scaleBeside = (
  name: string,
  unit: ChannelUnit | null,
  main: Scale,
  preamble: Preamble,
): Scale => {
  if (unit === null && main.couple === null) return main;
  if (unit === null) return scaleBeside(name, main.unit, main, preamble);
  if (!isVoltage(unit)) return { unit, couple: null };
  if (main.couple === null) return refuseVoltage(name);
  return { unit, couple: { ...main.couple, type: typeBeside(name, preamble) ?? main.couple.type } };
};

const typeBeside = (name: string, preamble: Preamble): CoupleType | null =>
  coupleTypeIn([name]) ?? coupleTypeFor(name, preamble);

const refuseVoltage = (name: string): never => {
  throw new Refusal(
    'bad-option',
    `the readings in “${name}” are voltages while the kiln’s are degrees; they can be no zone or ` +
      'setpoint',
  );
};

/** Outputs that never exceed one are shares of full power, or a relay that is on or off. */
export const asPercent = (values: Float64Array, isPercent: boolean): Float64Array => {
  const isShare = !isPercent && values.every((value) => Number.isNaN(value) || value <= 1);
  return isShare ? values.map((value) => value * 100) : values;
};

/** The columns beside the main one, for the rows that are kept. */
export const sideColumns = (
  table: TableRead,
  columns: RawColumns,
  rows: Uint32Array,
  main: Scale,
): Side => {
  const { plan, sample } = table;
  const { setpoint, output, zones } = plan.roles;
  const valuesOf = (column: number): Float64Array =>
    gather(columns.values[plan.wanted.indexOf(column)]!, rows);
  const celsiusOfColumn = (column: number): Float64Array => {
    const unit = temperatureScale(sample.units[column] ?? null);
    const scale = scaleBeside(sample.names[column]!, unit, main, sample.preamble);
    return sideCelsius(valuesOf(column), scale, rows, plan.noReading.numbers);
  };
  const percentIn = (column: number): Float64Array =>
    asPercent(valuesOf(column), sample.units[column] === 'percent');
  return {
    setpointC: setpoint === null ? null : celsiusOfColumn(setpoint.column),
    outputPercent: !output?.isPercent ? null : percentIn(output.column),
    zones: zones.map((column) => ({
      channel: sample.names[column]!,
      celsius: celsiusOfColumn(column),
    })),
  };
};
