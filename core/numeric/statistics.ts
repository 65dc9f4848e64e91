/** Robust statistics on plain numbers; checked in the tests against a general-purpose library. */

/**
 * Consistency factor that makes the median absolute deviation estimate the standard deviation of
 * normal data: 1/Φ⁻¹(3/4). Hampel, "The influence curve and its role in robust estimation",
 * J. Am. Stat. Assoc. 69 (1974).
 */
const MAD_TO_SIGMA = 1.482602218505602;

/** The arithmetic mean; NaN if empty. */
export const mean = (values: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
};

/** The `share` quantile (0…1) with linear interpolation between order statistics; NaN if empty. */
export const quantile = (values: ArrayLike<number>, share: number): number => {
  if (values.length === 0) return NaN;
  const sorted = Float64Array.from(values).sort();
  const at = share * (sorted.length - 1);
  const below = Math.floor(at);
  const lower = sorted[below]!;
  const upper = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return lower + (upper - lower) * (at - below);
};

/** The median; NaN if empty. */
export const median = (values: ArrayLike<number>): number => quantile(values, 0.5);

/** The median absolute deviation from the median, unscaled; NaN if empty. */
export const medianAbsoluteDeviation = (values: ArrayLike<number>): number => {
  const centre = median(values);
  return median(Float64Array.from(values, (value) => Math.abs(value - centre)));
};

/** A robust estimate of the standard deviation; NaN if empty. */
export const robustSigma = (values: ArrayLike<number>): number =>
  MAD_TO_SIGMA * medianAbsoluteDeviation(values);

/** At most `count` indices spread evenly over `length` items, so that long logs cost no more. */
export const spreadIndices = (length: number, count: number): number[] => {
  const step = Math.max(1, length / count);
  return Array.from({ length: Math.min(length, count) }, (_, k) => Math.floor(k * step));
};
