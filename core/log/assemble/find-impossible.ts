import type { ChannelUnit } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { isNoReadingCode } from '../text/no-reading-codes.ts';
import { extentOf } from './gather.ts';

/** Between which numbers readings of a unit lie, and what is far in it. */
interface Bounds {
  readonly least: number;
  readonly largest: number;
  /** A missing reading stands at least so far from its neighbours (chosen). */
  readonly leastJump: number;
  /** Below this no kiln stands (chosen). */
  readonly coldest: number;
}

/** In °C, °F or K no couple reads beyond these (tungsten–rhenium ends at 2315 °C, 4199 °F). */
const DEGREES: Bounds = { least: -460, largest: 4300, leastJump: 100, coldest: -60 };
/** From type E at −270 °C to type E at 1000 °C (ITS-90); far is 100 °C of type K. */
const MILLIVOLTS: Bounds = { least: -10, largest: 77, leastJump: 4, coldest: -10 };
const MICROVOLTS: Bounds = { least: -1e4, largest: 7.7e4, leastJump: 4e3, coldest: -1e4 };

const boundsOf = (unit: ChannelUnit | null): Bounds => {
  if (unit === 'mV') return MILLIVOLTS;
  return unit === 'uV' ? MICROVOLTS : DEGREES;
};

/** It stands so many times further off than readings usually step, if the readings before and after it
 * meet across it … (chosen) */
const JUMP_PER_STEP = 5;
/** … or so many times further where it stands at the log's beginning or end (chosen). */
const JUMP_PER_STEP_AT_END = 20;
/** … unless it stays there for so many rows, as a sensor that has come off does (chosen). */
const STAYS_ROWS = 3;
/**
 * Ends of the ranges of sensor chips: no reading falls on them by chance, so that one that stays
 * there at the log's end needs no leap beyond the least (common practice).
 */
const ENDS_OF_CHIPS: ReadonlySet<number> = new Set([1023.75, 2047.75, 3276.7, -3276.8, 6553.5]);
/** Readings meet across a gap too if they went on at so many times the usual step (chosen). */
const GOES_ON = 2;
/** Readings meet across a gap if they differ by less than this share of the jump (chosen). */
const MEETS_WITHIN = 0.5;
/** A known code stands apart in at least this share of the places where it comes (chosen). */
const MOSTLY_APART = 0.7;
/** A number that is on no list counts only if it is repeated exactly at least so often (chosen). */
const LEAST_REPEATS = 3;
/** Steps between readings are usual ones if they are so at the start of the log. */
const STEPS_LOOKED_AT = 20_000;

const isBeyondReadings = (value: number, { least, largest }: Bounds): boolean =>
  value < least || value > largest;

/** The median of the steps between readings that differ. */
const usualStep = (values: Float64Array): number => {
  const steps = [...values.subarray(1)]
    .map((value, index) => Math.abs(value - values[index]!))
    .filter((step) => step > 0)
    .sort((one, other) => one - other);
  return steps[steps.length >> 1] ?? 0;
};

interface Runs {
  readonly count: number;
  readonly runs: number;
  /** How many of them stand apart from the readings around them. */
  readonly apart: number;
}

/** Whether one run of a value stands apart; `before` and `after` are NaN at the log's ends. */
const standsApart = (
  value: number,
  [before, after]: readonly [number, number],
  rows: number,
  step: number,
  bounds: Bounds,
): boolean => {
  const jumps = [before, after]
    .filter((neighbour) => !Number.isNaN(neighbour))
    .map((neighbour) => Math.abs(neighbour - value));
  if (jumps.length === 0) return false;
  const jump = Math.min(...jumps);
  if (jump < bounds.leastJump) return false;
  if (value < bounds.coldest) return true;
  if (jumps.length === 1) {
    if (rows >= STAYS_ROWS && ENDS_OF_CHIPS.has(value)) return true;
    return jump >= (rows >= STAYS_ROWS ? JUMP_PER_STEP : JUMP_PER_STEP_AT_END) * step;
  }
  const apart = Math.abs(before - after);
  const meets = apart < MEETS_WITHIN * jump || apart <= GOES_ON * (rows + 1) * step;
  return jump >= JUMP_PER_STEP * step && meets;
};

/** The runs of exactly one value among others. */
const runsOf = (values: Float64Array, value: number, step: number, bounds: Bounds): Runs => {
  let [count, runs, apart] = [0, 0, 0];
  for (let i = 0; i < values.length; i += 1) {
    if (values[i] !== value) continue;
    const from = i;
    while (values[i + 1] === value) i += 1;
    count += i + 1 - from;
    const before = values[from - 1] ?? Number.NaN;
    const after = values[i + 1] ?? Number.NaN;
    runs += 1;
    if (standsApart(value, [before, after], i + 1 - from, step, bounds)) apart += 1;
  }
  return { count, runs, apart };
};

/**
 * Numbers that could stand for missing readings: the least, the largest, the first and the last,
 * and every known code next to which the readings jump.
 */
const suspects = (values: Float64Array, { leastJump }: Bounds): number[] => {
  const { min, max } = extentOf(values);
  const found = new Set([min, max, values[0] ?? min, values[values.length - 1] ?? max]);
  for (let i = 1; i < values.length; i += 1) {
    const value = values[i]!;
    const last = values[i - 1]!;
    if (Math.abs(value - last) < leastJump) continue;
    if (isNoReadingCode(value)) found.add(value);
    if (isNoReadingCode(last)) found.add(last);
  }
  return [...found];
};

const withinReadings = (values: Float64Array, bounds: Bounds): Float64Array => {
  const { min, max } = extentOf(values);
  if (!isBeyondReadings(min, bounds) && !isBeyondReadings(max, bounds)) return values;
  const usable = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1) {
    if (isBeyondReadings(values[i]!, bounds)) continue;
    usable[count] = values[i]!;
    count += 1;
  }
  return usable.subarray(0, count);
};

/** Of the readings, more than this share beyond what couples reach is no matter of marks (chosen). */
const MOST_BEYOND = 0.2;
/** … if so many of them differ (chosen). */
const DIFFERENT = 8;

/**
 * Refuses a column of degrees that run far beyond what any couple reads, as counts of tenths do.
 *
 * @throws Refusal `no-temperature`
 */
export const refuseBeyondReadings = (values: Float64Array): void => {
  const { min, max } = extentOf(values);
  if (!isBeyondReadings(min, DEGREES) && !isBeyondReadings(max, DEGREES)) return;
  const beyond = values.filter((value) => isBeyondReadings(value, DEGREES));
  if (beyond.length <= MOST_BEYOND * values.length || new Set(beyond).size < DIFFERENT) return;
  throw new Refusal(
    'no-temperature',
    `the readings run from ${min} to ${max}, far beyond what a thermocouple gives; if they count ` +
      'tenths of a degree, divide them by ten first, or name another column or unit',
  );
};

/**
 * The numbers of a column that stand for a missing reading: what no thermocouple reads at all;
 * known codes that stand far from their neighbours wherever they come; and any lowest or highest
 * number below what kilns reach that is repeated exactly and stands so. `values` are the column's
 * numbers in file order in the file's own unit, without NaN; `unit` matters where it is a voltage.
 */
export const findImpossible = (
  values: Float64Array,
  unit: ChannelUnit | null = null,
): ReadonlySet<number> => {
  const bounds = boundsOf(unit);
  const impossible = new Set<number>();
  const usable = withinReadings(values, bounds);
  if (usable.length < values.length) {
    for (const value of values) if (isBeyondReadings(value, bounds)) impossible.add(value);
  }
  const step = usualStep(usable.subarray(0, STEPS_LOOKED_AT));
  for (const value of suspects(usable, bounds)) {
    const { count, runs, apart } = runsOf(usable, value, step, bounds);
    const isCode = isNoReadingCode(value);
    // A code that stands apart again and again is one also where a reading came near it.
    const standApart = apart === runs || (isCode && apart > 1 && apart >= MOSTLY_APART * runs);
    const isRepeated = count >= LEAST_REPEATS && value < bounds.coldest;
    const isStuck = count === usable.length && value < bounds.coldest && isCode;
    if ((standApart && (isCode || isRepeated)) || isStuck) impossible.add(value);
  }
  return impossible;
};
