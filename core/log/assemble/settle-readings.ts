import type { RawColumns } from '../columns/raw-columns.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { declaredUnit } from '../text/preamble.ts';
import { isVoltage, temperatureScale, unitInName } from '../text/unit-text.ts';
import { coldColumn } from './cold-column.ts';
import { convertVoltages } from './convert-voltages.ts';
import { coupleTypeOf, decideCouple, refuseCoupleOptions } from './decide-couple.ts';
import { areFine, decideUnit, saidUnit, type UnitEvidence } from './decide-unit.ts';
import { refuseBeyondReadings } from './find-impossible.ts';
import { extentOf, gather } from './gather.ts';
import type { Parted } from './part-series.ts';
import {
  accountForMarks,
  readingsOf,
  rejectBelowAbsoluteZero,
  rejectImpossible,
} from './reject-rows.ts';
import type { Scale } from './scale.ts';
import { celsiusOf } from './side-columns.ts';
import type { TableRead } from './table-read.ts';
import { toCelsius } from './to-celsius.ts';

/** All that the file and the person say of the unit. */
const evidenceOf = (
  { sample, plan, decisions, knownCouple }: TableRead,
  main: RawColumns,
  name: string,
): UnitEvidence => {
  const { temperature, zones, setpoint } = plan.roles;
  const scaleOf = (column: number): ChannelUnit | null =>
    temperatureScale(sample.units[column] ?? null);
  const others = [...zones, ...(setpoint === null ? [] : [setpoint.column])];
  return {
    given: decisions.unit ?? null,
    inCells: main.units.counts,
    header: scaleOf(temperature) ?? temperatureScale(unitInName(name)),
    preamble: declaredUnit(sample.preamble),
    others: others.map(scaleOf).filter((scale) => scale !== null),
    isUnitInOwnColumn: plan.unitColumn !== null,
    voltages: {
      hasCouple: coupleTypeOf(name, sample, { decisions, known: knownCouple }) !== null,
      isFine: areFine(sample.profiles[temperature]!.values),
    },
  };
};

/** The unit in which the main readings stand once voltages are turned into °C. */
const mainUnit = ({ unit, couple }: Scale): ChannelUnit => (couple === null ? unit : 'C');

/** Turns voltages into °C, where the readings are; else leaves them as they are. */
const settleScale = (
  table: TableRead,
  parted: Parted | null,
  main: RawColumns,
  name: string,
  unit: ChannelUnit,
  gone: number,
): { scale: Scale; impossible: ReadonlySet<number> } => {
  const { sample, decisions, knownCouple: known, account } = table;
  refuseCoupleOptions(unit, decisions);
  if (!isVoltage(unit)) {
    return { scale: { unit, couple: null }, impossible: rejectBelowAbsoluteZero(main, unit) };
  }
  const cold = coldColumn(table, parted, main);
  const said = { decisions, known };
  const scale = { unit, couple: decideCouple(name, unit, sample, cold, said, account) };
  return { scale, impossible: convertVoltages(main, scale, account, gone) };
};

/** The scale of the main readings, and how far they climb in °C. */
export interface Settled {
  readonly scale: Scale;
  readonly riseC: number;
}

/**
 * Rejects what turns out to be no reading, decides the unit, turns voltages into °C in their place,
 * and accounts for all of it.
 *
 * @throws Refusal for voltages of no known couple, and for decisions that do not suit the readings
 */
export const settleReadings = (
  table: TableRead,
  parted: Parted | null,
  main: RawColumns,
): Settled => {
  const { plan, sample, account } = table;
  const name = parted?.name ?? sample.names[plan.roles.temperature] ?? '';
  const evidence = evidenceOf(table, main, name);
  const said = saidUnit(evidence);
  // Voltages that are none are told from degrees once the couple is known.
  if (!isVoltage(said)) refuseBeyondReadings(readingsOf(main));
  const impossible = rejectImpossible(main, plan.noReading.numbers, said);
  const extent = extentOf(readingsOf(main));
  const unit = decideUnit(evidence, extent, account);
  const { scale, impossible: more } = settleScale(table, parted, main, name, unit, impossible.size);
  const met = {
    words: [...table.marks.keys()],
    numbers: [...impossible, ...more],
    given: table.decisions.noReadingMarks ?? [],
  };
  accountForMarks(met, account);
  const { min, max } = scale.couple === null ? extent : extentOf(readingsOf(main));
  const kept = mainUnit(scale);
  return { scale, riseC: toCelsius(max, kept) - toCelsius(min, kept) };
};

/** The °C of the main readings of some rows, once they are settled. */
export const mainCelsius = (main: RawColumns, rows: Uint32Array, scale: Scale): Float64Array => {
  const printed = gather(main.values[0]!, rows);
  const { unit, couple } = scale;
  if (couple !== null) return printed;
  if (main.units.counts.size === 0) return celsiusOf(printed, unit);
  const celsius = new Float64Array(printed.length);
  for (let i = 0; i < rows.length; i += 1) {
    celsius[i] = toCelsius(printed[i]!, main.units.of(rows[i]!) ?? unit);
  }
  return celsius;
};
