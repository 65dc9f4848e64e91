import { leastSquares } from '../numeric/least-squares.ts';
import { loadOf, offPrior, powerOf, PRIOR_DEVIATIONS, PRIOR_MEANS, wallOf } from './kiln-prior.ts';
import type { PowerCourse } from './power-course.ts';
import {
  leftOver,
  misfitOf,
  usableWindows,
  type NoWindows,
  type PowerWindow,
} from './power-windows.ts';
import type { Load, Wall } from './wall-model.ts';

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

export type NoFit = NoWindows | 'course-does-not-fit';

export type FitResult =
  { readonly fit: KilnFit; readonly reason: null } | { readonly fit: null; readonly reason: NoFit };

/** What they come to together: where a firing leaves less, its power is known the better. */
const ALLOWED_SHARE = 0.025;
/** A firing left over by more than this ran otherwise than a kiln does: opened, fuelled, misread. */
export const MOST_MISFIT_SHARE = 0.06;

/** From one firing of a kiln to another: load, its coupling, and power (chosen, in logarithms). */
const AGAIN_DEVIATIONS = [0.5, 0.1, 0.3] as const;

/**
 * Fits wall, load and power to one firing: at full power the power required is the kiln's, after
 * shut-off it is none. Least squares with what is known of kilns beforehand.
 */
export const fitKiln = (course: PowerCourse | null): FitResult => {
  const windows = usableWindows(course);
  if (course === null || typeof windows === 'string') {
    return { fit: null, reason: typeof windows === 'string' ? windows : 'log-starts-hot' };
  }
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
  windows: readonly PowerWindow[],
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
  const windows = usableWindows(course);
  if (course === null || typeof windows === 'string') {
    return { again: null, reason: typeof windows === 'string' ? windows : 'log-starts-hot' };
  }
  const again = fitAgain(course, windows, known);
  return again.misfitShare <= MOST_MISFIT_SHARE
    ? { again, reason: null }
    : { again: null, reason: 'course-does-not-fit' };
};
