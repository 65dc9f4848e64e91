import { meaningOf } from '../columns/name-meaning.ts';
import type { RawColumns } from '../columns/raw-columns.ts';
import { profileNumbers } from '../columns/profile.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { isVoltage, temperatureScale, unitInName } from '../text/unit-text.ts';
import type { ColdColumn } from './decide-couple.ts';
import { alignSeries, type Parted } from './part-series.ts';
import type { TableRead } from './table-read.ts';
import { toCelsius } from './to-celsius.ts';

/** Where a cold junction can stand, °C (chosen: beyond it no logger works). */
const COLDEST_C = -60;
const WARMEST_C = 120;
/** A median beyond this is no room's in °C, so it is °F (chosen) … */
const WARMEST_ROOM_C = 55;
/** … and beyond this, kelvin. */
const COOLEST_ROOM_K = 250;

const unitOf = (values: Float64Array, shown: ChannelUnit | null): ChannelUnit => {
  if (shown !== null && !isVoltage(shown)) return shown;
  const median = profileNumbers(values)?.median ?? 0;
  if (median > COOLEST_ROOM_K) return 'K';
  return median > WARMEST_ROOM_C ? 'F' : 'C';
};

/** Cold ends move slowly: a missing one is the one before, or else the next that is there. */
const filled = (celsius: Float64Array): Float64Array | null => {
  let last = celsius.find((value) => !Number.isNaN(value));
  if (last === undefined) return null;
  return celsius.map((value) => {
    if (!Number.isNaN(value)) last = value;
    return last!;
  });
};

const inCelsius = (values: Float64Array, shown: ChannelUnit | null): Float64Array | null => {
  const unit = unitOf(values, shown);
  return filled(
    values.map((value) => {
      const celsius = toCelsius(value, unit);
      return celsius >= COLDEST_C && celsius <= WARMEST_C ? celsius : Number.NaN;
    }),
  );
};

/** The channel of a long table that holds the cold junction, at the main one's times. */
const fromChannel = (table: TableRead, parted: Parted): ColdColumn | null => {
  const given = table.decisions.coldJunctionColumn;
  if (given === null) return null;
  const series = parted.others.find(({ name }) =>
    given === undefined ? meaningOf(name) === 'cold-junction' : name === given,
  );
  if (series === undefined) return null;
  const values = alignSeries(series, parted.main.time.subarray(0, parted.main.length), Infinity);
  const celsius = inCelsius(values, temperatureScale(unitInName(series.name)));
  return celsius && { name: series.name, why: given === undefined ? 'name' : 'given', celsius };
};

/** Where the cold end stood in each row of `main`, as a column or channel says; null without one. */
export const coldColumn = (
  table: TableRead,
  parted: Parted | null,
  main: RawColumns,
): ColdColumn | null => {
  const { plan, sample } = table;
  const { coldJunction } = plan.roles;
  if (coldJunction === null) return parted === null ? null : fromChannel(table, parted);
  const { column, why } = coldJunction;
  const values = main.values[plan.wanted.indexOf(column)]!.subarray(0, main.length);
  const celsius = inCelsius(values, temperatureScale(sample.units[column] ?? null));
  return celsius && { name: sample.names[column] ?? '', why, celsius };
};
