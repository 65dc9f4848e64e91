import type { ReasonId } from '../ids.ts';
import { parseQuantity } from '../text/quantity.ts';
import { declaredUnit } from '../text/preamble.ts';
import { isVoltage, temperatureScale, type PrintedUnit } from '../text/unit-text.ts';
import type { NameMeaning } from './name-meaning.ts';
import { agrees, type ColumnProfile } from './profile.ts';
import type { TableSample } from './sample.ts';

/** Beyond this a cold junction is no longer one, in °C or °F (chosen). */
const WARMEST_REST = 130;
/** Readings that keep within so much of each other are of something at rest (chosen). */
const REST_SPREAD = 40;
/** No couple's millivolts reach this at its hottest (type E at 1000 °C gives 76.4, ITS-90). */
const MOST_MILLIVOLTS = 78;

/** The unit that a column's header shows, or its sampled cells. */
const unitShown = (sample: TableSample, { column, kind }: ColumnProfile): PrintedUnit | null => {
  const unit = sample.units[column] ?? null;
  if (unit !== null || kind !== 'quantity') return unit;
  const cell = sample.rows.map((row) => row[column] ?? '').find((text) => /\d/.test(text));
  return parseQuantity(cell ?? '', sample.decimalMark)?.unit ?? null;
};

/** Whether a column says that it holds a couple's voltage. */
export const isVoltageColumn = (sample: TableSample, profile: ColumnProfile): boolean =>
  isVoltage(unitShown(sample, profile));

/** Whether the readings of a column stay where a room or a logger is. */
export const isAtRest = ({ numbers }: ColumnProfile): boolean =>
  numbers === null || (numbers.max < WARMEST_REST && numbers.max - numbers.min < REST_SPREAD);

/** Whether readings can be voltages, for all that the table says so far. */
const canBeVoltage = (sample: TableSample, main: ColumnProfile): boolean => {
  const unit = unitShown(sample, main) ?? declaredUnit(sample.preamble);
  if (unit !== null) return isVoltage(unit);
  return (main.numbers?.max ?? Infinity) < MOST_MILLIVOLTS;
};

/** Whether a column at rest says that it holds degrees. */
const isRoom = (sample: TableSample, profile: ColumnProfile): boolean => {
  const scale = temperatureScale(unitShown(sample, profile));
  return scale !== null && !isVoltage(scale) && isAtRest(profile) && agrees(profile);
};

/**
 * Finds where the temperature of the couple's cold end stands: where the person says; by its name;
 * or, beside voltages, the one column of degrees that stays at room temperature. Null where there is
 * none, or the readings are degrees. `taken` are columns that hold something else.
 */
export const findColdJunction = (
  sample: TableSample,
  meanings: readonly NameMeaning[],
  main: ColumnProfile,
  taken: readonly number[],
  given: number | null | undefined,
): { readonly column: number; readonly why: ReasonId } | null => {
  if (given !== undefined) return given === null ? null : { column: given, why: 'given' };
  if (!canBeVoltage(sample, main)) return null;
  const free = sample.profiles.filter(
    (profile) => !taken.includes(profile.column) && profile.numbers !== null,
  );
  const named = free.find(({ column }) => meanings[column] === 'cold-junction');
  if (named !== undefined) return { column: named.column, why: 'name' };
  if (!isVoltageColumn(sample, main)) return null;
  const rooms = free.filter((profile) => isRoom(sample, profile));
  return rooms.length === 1 ? { column: rooms[0]!.column, why: 'behaviour' } : null;
};
