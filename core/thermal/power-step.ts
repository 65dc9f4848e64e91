import { leastSquares, solveLinear } from '../numeric/least-squares.ts';
import { hotPowerFactor } from './hot-wire.ts';
import { MOST_MISFIT_SHARE } from './fit-kiln.ts';
import { loadOf, offPrior, powerOf, PRIOR_DEVIATIONS, PRIOR_MEANS, wallOf } from './kiln-prior.ts';
import type { PowerCourse } from './power-course.ts';
import {
  HEATING_SHARE,
  leftOver,
  misfitOf,
  TOGETHER,
  usableWindows,
  wholeShares,
  type PowerWindow,
} from './power-windows.ts';
import { requiredPower } from './wall-model.ts';

/** What share of its power a kiln lost at an interval, and that share's standard error. */
export interface PowerStep {
  readonly lostShare: number;
  readonly error: number;
}

/** Windows that a step needs to either side: the firing as a whole must allow a fit already. */
const FEWEST_BESIDE = 1;
/** Nothing is known of a loss before the log shows it (chosen). */
const LOST_DEVIATION = 0.5;

/** A window across the step belongs to neither side. */
const besides = (windows: readonly PowerWindow[], atInterval: number): PowerWindow[] =>
  windows.filter(
    ({ from, share }) => share === 0 || from >= atInterval || from + TOGETHER <= atInterval,
  );

/**
 * The fit of a kiln with a power that falls at an interval of the course and stays down; null where
 * the firing allows no fit, or shows less than ten minutes of heating to either side.
 *
 * @param shares of full power, from a logged output; all and none where left out
 */
export const fitPowerStep = (
  course: PowerCourse | null,
  atInterval: number,
  shares: Float64Array | null = course && wholeShares(course),
): PowerStep | null => {
  const windows = usableWindows(course, shares);
  if (course === null || typeof windows === 'string') return null;
  const clean = besides(windows, atInterval);
  const isAfter = clean.map(({ from, share }) => share > 0 && from >= atInterval);
  const after = isAfter.filter(Boolean).length;
  const before = clean.filter(({ share }) => share > 0).length - after;
  if (after < FEWEST_BESIDE || before < FEWEST_BESIDE) return null;
  const left = (at: readonly number[]) => {
    const power = powerOf(at);
    const whole = leftOver(course, clean, [wallOf(at), loadOf(at[2]!, at[3]!)], power, power);
    return whole.map((value, i) => {
      const { share, hotFactor } = clean[i]!;
      return isAfter[i] ? value + (at[5]! * share * hotFactor) / HEATING_SHARE : value;
    });
  };
  const means = [...PRIOR_MEANS, 0];
  const deviations = [...PRIOR_DEVIATIONS, LOST_DEVIATION];
  const { parameters, covariance } = leastSquares(
    (at) => [...left(at), ...offPrior(at, means, deviations)],
    means,
  );
  const misfitShare = misfitOf(left(parameters), clean);
  if (!(misfitShare <= MOST_MISFIT_SHARE)) return null;
  return { lostShare: parameters[5]!, error: Math.sqrt(covariance[5]![5]!) };
};

/** Looked at to either side of a step: an hour (chosen), in intervals of two minutes. */
const REACH = 30;
/** Fewer known intervals to one side are scatter: twenty minutes (chosen). */
const FEWEST = 10;
/** Less output than this says little of what full power is (chosen). */
const LEAST_SHARE = 0.15;
/** A step must stand out by this many standard errors, and be worth a closer look (chosen). */
const SURE_ERRORS = 5;
const LEAST_LOST = 0.08;

/** What the power was short of the output at each interval, by a kiln that lost nothing. */
const shortfalls = (course: PowerCourse, shares: Float64Array): Float64Array | null => {
  const windows = usableWindows(course, shares);
  if (typeof windows === 'string') return null;
  const { parameters: at } = leastSquares(
    (given) => [
      ...leftOver(
        course,
        windows,
        [wallOf(given), loadOf(given[2]!, given[3]!)],
        powerOf(given),
        powerOf(given),
      ),
      ...offPrior(given, PRIOR_MEANS, PRIOR_DEVIATIONS),
    ],
    PRIOR_MEANS,
  );
  const required = requiredPower(course, wallOf(at), loadOf(at[2]!, at[3]!));
  return required.map(
    (value, i) => shares[i]! - value / (powerOf(at) * hotPowerFactor(course.celsius[i]!)),
  );
};

/** The share lost at an interval beside a level and a drift, and its standard error. */
const stepAt = (short: Float64Array, shares: Float64Array, at: number): PowerStep | null => {
  const rows: [number, number, number][] = [];
  const values: number[] = [];
  let after = 0;
  for (let i = Math.max(1, at - REACH); i < Math.min(shares.length, at + REACH); i++) {
    if (!(shares[i]! > LEAST_SHARE)) continue;
    rows.push([1, (i - at) / REACH, i >= at ? shares[i]! : 0]);
    values.push(short[i]!);
    if (i >= at) after++;
  }
  if (after < FEWEST || rows.length - after < FEWEST) return null;
  const normal = [0, 1, 2].map((a) =>
    [0, 1, 2].map((b) => rows.reduce((sum, row) => sum + row[a]! * row[b]!, 0)),
  );
  const right = [0, 1, 2].map((a) => rows.reduce((sum, row, i) => sum + row[a]! * values[i]!, 0));
  const fit = solveLinear(normal, right);
  const squares = rows.reduce((sum, row, i) => {
    const left = values[i]! - row.reduce((value, x, k) => value + x * fit[k]!, 0);
    return sum + left * left;
  }, 0);
  const unit = solveLinear(normal, [0, 0, 1])[2]!;
  return { lostShare: fit[2]!, error: Math.sqrt((unit * squares) / (rows.length - 3)) };
};

/**
 * The interval at which a logged output began to bring surely less than before; null where there is
 * none. At one output a kiln has one power: what its course required falls short of that from the
 * moment on when a part of it is gone, whatever the controller makes of it.
 */
export const findPowerStep = (course: PowerCourse, shares: Float64Array): number | null => {
  const short = shortfalls(course, shares);
  if (short === null) return null;
  let best: number | null = null;
  let surest = SURE_ERRORS;
  for (let at = 1; at < shares.length; at++) {
    const step = stepAt(short, shares, at);
    if (step === null || step.lostShare < LEAST_LOST) continue;
    const sureness = step.lostShare / step.error;
    if (sureness <= surest) continue;
    surest = sureness;
    best = at;
  }
  return best;
};
