import { celsiusDelta, type CelsiusDelta } from '../units.ts';
import { quantile, robustSigma, spreadIndices } from '../numeric/statistics.ts';

const SAMPLE_COUNT = 20_000;
/** Residuals beyond this quantile are knees and spikes, not noise (chosen). */
const TRIM = 0.95;
/**
 * Root mean square of a normal sample cut at its 95 % quantile of |z|, by which the trimmed value is
 * divided: sqrt(1 − 2·z·φ(z)/0.95) with z = 1.95996 and φ the normal density.
 */
const TRIMMED_RMS_OF_NORMAL = Math.sqrt(1 - (2 * 1.959964 * 0.0584451) / 0.95);

/**
 * How far each sample lies from the line between its neighbours, scaled so that independent noise
 * of standard deviation σ gives residuals of standard deviation σ whatever the spacing.
 */
const neighbourResiduals = (atSeconds: Float64Array, celsius: Float64Array): number[] =>
  spreadIndices(Math.max(0, atSeconds.length - 2), SAMPLE_COUNT).map((k) => {
    const i = k + 1;
    const before = atSeconds[i]! - atSeconds[i - 1]!;
    const span = atSeconds[i + 1]! - atSeconds[i - 1]!;
    const weight = before / span;
    const line = celsius[i - 1]! * (1 - weight) + celsius[i + 1]! * weight;
    return (celsius[i]! - line) / Math.sqrt(1 + weight ** 2 + (1 - weight) ** 2);
  });

/** A median-based estimate below this share of the trimmed one is rounding's doing (chosen). */
const LEAST_MEDIAN_SHARE = 0.25;

/**
 * Fewer readings, typed in by hand, bend with the firing: their bends are no noise (chosen). What
 * they leave unseen widens the ranges by their distance, not by this.
 */
const FEWEST_SAMPLES = 20;

/**
 * The standard deviation of the reading noise, rounding included; 0 where too few readings tell it. The median-based estimate bears
 * many outliers but fails on rounded readings, where most residuals may be the same; the trimmed one
 * bears rounding but few outliers. The smaller is taken, unless the first has collapsed.
 */
export const estimateNoise = (atSeconds: Float64Array, celsius: Float64Array): CelsiusDelta => {
  if (celsius.length < FEWEST_SAMPLES) return celsiusDelta(0);
  const residuals = neighbourResiduals(atSeconds, celsius);
  const limit = quantile(residuals.map(Math.abs), TRIM);
  const inside = residuals.filter((residual) => Math.abs(residual) <= limit);
  const meanSquare = inside.reduce((sum, residual) => sum + residual ** 2, 0) / inside.length;
  const trimmed = Math.sqrt(meanSquare) / TRIMMED_RMS_OF_NORMAL;
  const medianBased = robustSigma(residuals);
  const isUsable = medianBased > LEAST_MEDIAN_SHARE * trimmed;
  return celsiusDelta(isUsable ? Math.min(medianBased, trimmed) : trimmed);
};

/** At least this share of the steps must be whole multiples for a rounding to be believed. */
const MULTIPLES_SHARE = 0.98;
/** Steps finer than this are a float's own digits, not a logger's rounding. */
const FINEST_STEP_C = 0.005;

/** The step to which readings were rounded, in °C; 0 where none shows. */
export const estimateResolution = (celsius: Float64Array): CelsiusDelta => {
  const steps = spreadIndices(Math.max(0, celsius.length - 1), SAMPLE_COUNT)
    .map((i) => Math.abs(celsius[i + 1]! - celsius[i]!))
    .filter((step) => step > FINEST_STEP_C);
  if (steps.length < 10) return celsiusDelta(0);
  const step = quantile(steps, 0.02);
  const isMultiple = (value: number) =>
    Math.abs(value / step - Math.round(value / step)) < 0.02 * Math.max(1, value / step / 20);
  const multiples = steps.filter(isMultiple).length;
  return celsiusDelta(multiples >= MULTIPLES_SHARE * steps.length ? step : 0);
};
