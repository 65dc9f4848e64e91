import { errorFunction } from 'simple-statistics';

/**
 * What is believed of the error by which the record misses the true heat-work, in °C at the top:
 * reading minus truth, with the chart's scatter, the hold rules and unseen time counted as if they
 * were errors of the reading. Weights add up to 1.
 */
export interface ErrorBelief {
  readonly errorsC: Float64Array;
  readonly weights: Float64Array;
}

/** Where errors come from, all in °C at the top. */
export interface ErrorSources {
  /** The couple errs uniformly within plus or minus this. */
  readonly toleranceC: number;
  /** Standard deviation of what is independent of the couple, taken as normal. */
  readonly modelSigmaC: number;
  /** What was not seen may have been cooler by this much in all … */
  readonly unseenCoolerC: number;
  /** … or hotter by this much, evenly between. */
  readonly unseenHotterC: number;
  /**
   * How well each error agrees with the witness cones of one place, a function a place. Places are
   * alternatives, each with the same weight, because a cone of difference from top to bottom is
   * ordinary (reference notes): the belief then spans the places.
   */
  readonly places: readonly ((errorC: number) => number)[];
}

const STEPS = 600;
/** Normal tails are followed this many standard deviations. */
const TAIL_SIGMAS = 4;
/** Keeps the grid finer than the smallest spread. */
const LEAST_SIGMA_C = 0.2;
const UNSEEN_POINTS = 11;
/**
 * Witness cones may contradict the class: aged wire, a couple pulled back from the chamber. Then
 * errors beyond the class are believed by this share, spread with this scale (chosen; no usable rate
 * of ageing is published).
 */
const BEYOND_CLASS_SHARE = 0.3;
const BEYOND_CLASS_SCALE_C = 25;
const BEYOND_CLASS_REACH_C = 120;

const normalShare = (z: number): number => (1 + errorFunction(z / Math.SQRT2)) / 2;

/** Density of a uniform error blurred by a normal one. */
const blurredUniform = (errorC: number, halfWidthC: number, sigmaC: number): number =>
  (normalShare((errorC + halfWidthC) / sigmaC) - normalShare((errorC - halfWidthC) / sigmaC)) /
  (2 * halfWidthC);

/** Effective errors that the unseen time may have made: hotter truth reads as a negative error. */
const unseenErrors = ({ unseenCoolerC, unseenHotterC }: ErrorSources): number[] => {
  if (unseenCoolerC === 0 && unseenHotterC === 0) return [0];
  return Array.from({ length: UNSEEN_POINTS }, (_, i) => {
    const side = (2 * (i + 0.5)) / UNSEEN_POINTS - 1;
    return side < 0 ? side * unseenHotterC : side * unseenCoolerC;
  });
};

const priorOf = (sources: ErrorSources): ((errorC: number) => number) => {
  const sigmaC = Math.max(sources.modelSigmaC, LEAST_SIGMA_C);
  const unseen = unseenErrors(sources);
  const withinClass = (errorC: number): number =>
    unseen.reduce(
      (sum, shift) => sum + blurredUniform(errorC - shift, sources.toleranceC, sigmaC),
      0,
    ) / unseen.length;
  if (sources.places.length === 0) return withinClass;
  const beyond = (errorC: number): number =>
    Math.exp(-Math.abs(errorC) / BEYOND_CLASS_SCALE_C) / (2 * BEYOND_CLASS_SCALE_C);
  return (errorC) =>
    (1 - BEYOND_CLASS_SHARE) * withinClass(errorC) + BEYOND_CLASS_SHARE * beyond(errorC);
};

const normalised = (raw: Float64Array): Float64Array => {
  const sum = raw.reduce((total, weight) => total + weight, 0);
  return raw.map((weight) => weight / sum);
};

/** Weighs every error by its sources, and by the witness cones where there are any. */
export const errorBelief = (sources: ErrorSources): ErrorBelief => {
  const own =
    sources.toleranceC +
    TAIL_SIGMAS * Math.max(sources.modelSigmaC, LEAST_SIGMA_C) +
    Math.max(sources.unseenCoolerC, sources.unseenHotterC);
  const hasCones = sources.places.length > 0;
  const reach = hasCones ? Math.max(own, BEYOND_CLASS_REACH_C) : own;
  const errorsC = Float64Array.from({ length: STEPS + 1 }, (_, i) => reach * ((2 * i) / STEPS - 1));
  const prior = errorsC.map(priorOf(sources));
  if (!hasCones) return { errorsC, weights: normalised(prior) };
  const weights = new Float64Array(errorsC.length);
  for (const likelihood of sources.places) {
    const place = normalised(prior.map((weight, i) => weight * likelihood(errorsC[i]!)));
    place.forEach((weight, i) => (weights[i] = weights[i]! + weight / sources.places.length));
  }
  return { errorsC, weights };
};

/** The error below which a share of the belief lies, in °C. */
export const errorQuantile = ({ errorsC, weights }: ErrorBelief, share: number): number => {
  let below = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const weight = weights[i]!;
    if (below + weight >= share && weight > 0) {
      const step = errorsC[1]! - errorsC[0]!;
      // Each weight is spread over its own step.
      return errorsC[i]! + step * ((share - below) / weight - 0.5);
    }
    below += weight;
  }
  return errorsC.at(-1)!;
};
