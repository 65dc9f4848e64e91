import { isNoReadingCode } from '../text/no-reading-codes.ts';
import { extentOf } from './gather.ts';

/** No thermocouple reads beyond these, in °C, °F or K (tungsten–rhenium ends at 2315 °C, 4199 °F). */
const LEAST_READING = -460;
const LARGEST_READING = 4300;

/** A missing reading stands at least so far from its neighbours … (chosen) */
const LEAST_JUMP = 100;
/** … and so many times further than readings usually step, if the readings before and after it
 * meet across it … (chosen) */
const JUMP_PER_STEP = 5;
/** … or so many times further where it stands at the log's beginning or end (chosen). */
const JUMP_PER_STEP_AT_END = 20;
/** Readings meet across a gap if they differ by less than this share of the jump (chosen). */
const MEETS_WITHIN = 0.5;
/** A number that is on no list counts only if it is repeated exactly at least so often (chosen). */
const LEAST_REPEATS = 3;
/** Below this, in any scale, no kiln stands (chosen). */
const COLDEST_KILN = -60;

/** Steps between readings are usual ones if they are so at the start of the log. */
const STEPS_LOOKED_AT = 20_000;

const isBeyondReadings = (value: number): boolean =>
  value < LEAST_READING || value > LARGEST_READING;

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
  /** Whether every run stands apart from the readings around it. */
  readonly standApart: boolean;
}

/** Whether one run of a value stands apart; `before` and `after` are NaN at the log's ends. */
const standsApart = (value: number, before: number, after: number, step: number): boolean => {
  const jumps = [before, after]
    .filter((neighbour) => !Number.isNaN(neighbour))
    .map((neighbour) => Math.abs(neighbour - value));
  if (jumps.length === 0) return false;
  const jump = Math.min(...jumps);
  if (jump < LEAST_JUMP) return false;
  if (value < COLDEST_KILN) return true;
  if (jumps.length === 1) return jump >= JUMP_PER_STEP_AT_END * step;
  return jump >= JUMP_PER_STEP * step && Math.abs(before - after) < MEETS_WITHIN * jump;
};

/** The runs of exactly one value among others. */
const runsOf = (values: Float64Array, value: number, step: number): Runs => {
  let count = 0;
  let standApart = true;
  for (let i = 0; i < values.length; i += 1) {
    if (values[i] !== value) continue;
    const from = i;
    while (values[i + 1] === value) i += 1;
    count += i + 1 - from;
    const before = values[from - 1] ?? Number.NaN;
    standApart &&= standsApart(value, before, values[i + 1] ?? Number.NaN, step);
    if (!standApart) break;
  }
  return { count, standApart };
};

/**
 * Numbers that could stand for missing readings: the least, the largest, the first and the last,
 * and every known code next to which the readings jump.
 */
const suspects = (values: Float64Array): number[] => {
  const { min, max } = extentOf(values);
  const found = new Set([min, max, values[0] ?? min, values[values.length - 1] ?? max]);
  for (let i = 1; i < values.length; i += 1) {
    const value = values[i]!;
    const last = values[i - 1]!;
    if (Math.abs(value - last) < LEAST_JUMP) continue;
    if (isNoReadingCode(value)) found.add(value);
    if (isNoReadingCode(last)) found.add(last);
  }
  return [...found];
};

const withinReadings = (values: Float64Array): Float64Array => {
  const usable = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1) {
    if (isBeyondReadings(values[i]!)) continue;
    usable[count] = values[i]!;
    count += 1;
  }
  return usable.subarray(0, count);
};

/**
 * The numbers of a column that stand for a missing reading: what no thermocouple reads at all;
 * known codes that stand far from their neighbours wherever they come; and any lowest or highest
 * number below what kilns reach that is repeated exactly and stands so. `values` are the column's
 * numbers in file order in the file's own unit, without NaN.
 */
export const findImpossible = (values: Float64Array): ReadonlySet<number> => {
  const impossible = new Set<number>();
  const usable = withinReadings(values);
  if (usable.length < values.length) {
    for (const value of values) if (isBeyondReadings(value)) impossible.add(value);
  }
  const step = usualStep(usable.subarray(0, STEPS_LOOKED_AT));
  for (const value of suspects(usable)) {
    const { count, standApart } = runsOf(usable, value, step);
    const isRepeated = count >= LEAST_REPEATS && value < COLDEST_KILN;
    const isStuck = count === usable.length && value < COLDEST_KILN && isNoReadingCode(value);
    if ((standApart && (isNoReadingCode(value) || isRepeated)) || isStuck) impossible.add(value);
  }
  return impossible;
};
