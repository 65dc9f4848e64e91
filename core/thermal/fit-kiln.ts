import { leastSquares } from '../numeric/least-squares.ts';
import { hotPowerFactor } from './hot-wire.ts';
import { FULL, OFF, type PowerCourse } from './power-course.ts';
import { requiredPower, type Load, type Wall } from './wall-model.ts';

/** A kiln as one firing shows it. Powers in °C/s of the wall; see the wall model for the unit. */
export interface KilnFit {
  readonly wall: Wall;
  readonly load: Load;
  /** Full power with cold elements. */
  readonly power: number;
  /** Standard error of the power's logarithm, given the wall. */
  readonly powerErrorGivenWall: number;
  /** Root mean square of the power left over, as a share of full power. */
  readonly misfitShare: number;
  /** Covariance of ln memory, rise, ln load, ln coupling and ln (power · memory), in this order. */
  readonly covariance: readonly (readonly number[])[];
}

/** What of a fit another firing of the same kiln is held against. */
export type KnownKiln = Pick<KilnFit, 'wall' | 'load' | 'power' | 'powerErrorGivenWall'>;

export type NoFit =
  'log-starts-hot' | 'no-cooling-logged' | 'never-at-full-power' | 'course-does-not-fit';

export type FitResult =
  { readonly fit: KilnFit; readonly reason: null } | { readonly fit: null; readonly reason: NoFit };

/** Intervals that are judged together: ten minutes, so that noise and relays are averaged out. */
const TOGETHER = 5;
/** What a model this plain leaves over while heating and cooling, as a share of full power (chosen). */
const HEATING_SHARE = 0.03;
const COOLING_SHARE = 0.02;
/** What they come to together: where a firing leaves less, its power is known the better. */
const ALLOWED_SHARE = 0.025;
/** Less than this says too little, in windows of ten minutes: half an hour, an hour (chosen). */
const FEWEST_FULL = 3;
const FEWEST_OFF = 6;
/** A firing left over by more than this ran otherwise than a kiln does: opened, fuelled, misread. */
const MOST_MISFIT_SHARE = 0.06;

/**
 * What is known of small kilns before any log (chosen from usual figures): walls of 65 to 115 mm of
 * insulating brick, of diffusivity 0.2 to 0.5 mm²/s, remember for 2 to 18 hours; their conductivity
 * about doubles up to 1000 °C; ware and shelves hold about what the wall does; radiation at 1000 °C
 * is some 300 W/(m²·K) against the wall's 2; a few times a steady 1000 °C is what kilns are built for.
 */
const PRIOR_MEANS = [Math.log(6 * 3600), 0.8, 0, Math.log(150), Math.log(3000)] as const;
const PRIOR_DEVIATIONS = [0.7, 0.5, 0.7, 0.5, 1] as const;
/** From one firing of a kiln to another: load, its coupling, and power (chosen, in logarithms). */
const AGAIN_DEVIATIONS = [0.5, 0.1, 0.3] as const;

interface Window {
  /** Index of its first interval. */
  readonly from: number;
  readonly isFull: boolean;
  readonly hotFactor: number;
}

/** Windows of ten minutes in which the power was all or none throughout. */
const windowsOf = ({ power, celsius }: PowerCourse): Window[] => {
  const windows: Window[] = [];
  for (let from = 1; from + TOGETHER <= power.length; from += TOGETHER) {
    const known = power.subarray(from, from + TOGETHER);
    const isFull = known.every((value) => value === FULL);
    if (!isFull && !known.every((value) => value === OFF)) continue;
    windows.push({ from, isFull, hotFactor: hotPowerFactor(celsius[from + (TOGETHER >> 1)]!) });
  }
  return windows;
};

const meanOver = (values: Float64Array, from: number): number => {
  let sum = 0;
  for (let i = from; i < from + TOGETHER; i++) sum += values[i]!;
  return sum / TOGETHER;
};

/** What is left over in each window, as a share of a power, over what the model may leave. */
const leftOver = (
  course: PowerCourse,
  windows: readonly Window[],
  [wall, load]: readonly [Wall, Load],
  power: number,
  unitPower: number,
): number[] => {
  const required = requiredPower(course, wall, load);
  return windows.map(({ from, isFull, hotFactor }) => {
    const had = isFull ? power * hotFactor : 0;
    const left = (meanOver(required, from) - had) / unitPower;
    return left / (isFull ? HEATING_SHARE : COOLING_SHARE);
  });
};

const wallOf = ([lnMemory = 0, rise = 0]: readonly number[]): Wall => ({
  memorySeconds: Math.exp(lnMemory),
  conductivityRise: rise,
});

const loadOf = (lnShare: number, lnCoupling: number): Load => ({
  share: Math.exp(lnShare),
  coupling: Math.exp(lnCoupling),
});

const offPrior = (
  parameters: readonly number[],
  means: readonly number[],
  deviations: readonly number[],
): number[] => parameters.map((value, i) => (value - means[i]!) / deviations[i]!);

const misfitOf = (left: readonly number[], windows: readonly Window[]): number => {
  const squares = left.reduce((sum, value, i) => {
    const share = value * (windows[i]!.isFull ? HEATING_SHARE : COOLING_SHARE);
    return sum + share * share;
  }, 0);
  return Math.sqrt(squares / left.length);
};

/** Why nothing can be fitted, or the windows. */
const usable = (course: PowerCourse | null): Window[] | NoFit => {
  if (course === null) return 'log-starts-hot';
  const windows = windowsOf(course);
  const full = windows.filter(({ isFull }) => isFull).length;
  if (windows.length - full < FEWEST_OFF) return 'no-cooling-logged';
  return full < FEWEST_FULL ? 'never-at-full-power' : windows;
};

/**
 * Fits wall, load and power to one firing: at full power the power required is the kiln's, after
 * shut-off it is none. Least squares with what is known of kilns beforehand.
 */
export const fitKiln = (course: PowerCourse | null): FitResult => {
  const windows = usable(course);
  if (course === null || typeof windows === 'string') {
    return { fit: null, reason: typeof windows === 'string' ? windows : 'log-starts-hot' };
  }
  // In steady °C across a wall of cold conductance, of which the prior knows something.
  const powerOf = (parameters: readonly number[]) => Math.exp(parameters[4]! - parameters[0]!);
  const left = (parameters: readonly number[]) => {
    const power = powerOf(parameters);
    const load = loadOf(parameters[2]!, parameters[3]!);
    return leftOver(course, windows, [wallOf(parameters), load], power, power);
  };
  const { parameters, covariance } = leastSquares(
    (at) => [...left(at), ...offPrior(at, PRIOR_MEANS, PRIOR_DEVIATIONS)],
    PRIOR_MEANS,
  );
  const misfitShare = misfitOf(left(parameters), windows);
  if (!(misfitShare <= MOST_MISFIT_SHARE)) return { fit: null, reason: 'course-does-not-fit' };
  const [wall, load] = [wallOf(parameters), loadOf(parameters[2]!, parameters[3]!)];
  const power = powerOf(parameters);
  const again = fitAgain(course, windows, { wall, load, power });
  return {
    fit: {
      wall,
      load,
      power,
      powerErrorGivenWall: again.powerErrorGivenWall,
      misfitShare,
      covariance,
    },
    reason: null,
  };
};

/** Load and power of a firing of a kiln whose wall is known. */
export interface Again {
  readonly load: Load;
  readonly power: number;
  readonly powerErrorGivenWall: number;
  readonly misfitShare: number;
}

const fitAgain = (
  course: PowerCourse,
  windows: readonly Window[],
  known: Pick<KilnFit, 'wall' | 'load' | 'power'>,
): Again => {
  const means = [known.load.share, known.load.coupling, known.power].map(Math.log);
  const left = ([lnShare = 0, lnCoupling = 0, lnPower = 0]: readonly number[]) => {
    const parts = [known.wall, loadOf(lnShare, lnCoupling)] as const;
    return leftOver(course, windows, parts, Math.exp(lnPower), known.power);
  };
  const { parameters, covariance } = leastSquares(
    (at) => [...left(at), ...offPrior(at, means, AGAIN_DEVIATIONS)],
    means,
  );
  const misfitShare = misfitOf(left(parameters), windows);
  return {
    load: loadOf(parameters[0]!, parameters[1]!),
    power: Math.exp(parameters[2]!),
    powerErrorGivenWall: (Math.sqrt(covariance[2]![2]!) * misfitShare) / ALLOWED_SHARE,
    misfitShare,
  };
};

/** Fits load and power of another firing of a kiln whose wall is known. */
export const fitPower = (
  course: PowerCourse | null,
  known: KnownKiln,
): { readonly again: Again; readonly reason: null } | { again: null; reason: NoFit } => {
  const windows = usable(course);
  if (course === null || typeof windows === 'string') {
    return { again: null, reason: typeof windows === 'string' ? windows : 'log-starts-hot' };
  }
  const again = fitAgain(course, windows, known);
  return again.misfitShare <= MOST_MISFIT_SHARE
    ? { again, reason: null }
    : { again: null, reason: 'course-does-not-fit' };
};

/** What share of its power a kiln lost at an interval, and that share's standard error. */
export interface PowerStep {
  readonly lostShare: number;
  readonly error: number;
}

/** Windows that a step needs to either side: the firing as a whole must allow a fit already. */
const FEWEST_BESIDE = 1;
/** Nothing is known of a loss before the log shows it (chosen). */
const LOST_DEVIATION = 0.5;

/**
 * The same fit with a power that falls at an interval of the course and stays down; null where the
 * firing allows no fit, or shows less than ten minutes to either side.
 */
export const fitPowerStep = (course: PowerCourse | null, atInterval: number): PowerStep | null => {
  const windows = usable(course);
  if (course === null || typeof windows === 'string') return null;
  // A window across the step belongs to neither side.
  const clean = windows.filter(
    ({ from, isFull }) => !isFull || from >= atInterval || from + TOGETHER <= atInterval,
  );
  const isAfter = clean.map(({ from, isFull }) => isFull && from >= atInterval);
  const after = isAfter.filter(Boolean).length;
  const before = clean.filter(({ isFull }) => isFull).length - after;
  if (after < FEWEST_BESIDE || before < FEWEST_BESIDE) return null;
  const means = [...PRIOR_MEANS, 0];
  const deviations = [...PRIOR_DEVIATIONS, LOST_DEVIATION];
  const left = (at: readonly number[]) => {
    const power = Math.exp(at[4]! - at[0]!);
    const lost = at[5]!;
    const whole = leftOver(course, clean, [wallOf(at), loadOf(at[2]!, at[3]!)], power, power);
    return whole.map((value, i) =>
      isAfter[i] ? value + (lost * clean[i]!.hotFactor) / HEATING_SHARE : value,
    );
  };
  const { parameters, covariance } = leastSquares(
    (at) => [...left(at), ...offPrior(at, means, deviations)],
    means,
  );
  const misfitShare = misfitOf(left(parameters), clean);
  if (!(misfitShare <= MOST_MISFIT_SHARE)) return null;
  return { lostShare: parameters[5]!, error: Math.sqrt(covariance[5]![5]!) };
};
