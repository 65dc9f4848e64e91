import { median } from '../numeric/statistics.ts';

/** A robust straight line with an interval of its slope. */
export interface SlopeEstimate {
  readonly slope: number;
  readonly low: number;
  readonly high: number;
  /** Median of y − slope·x. */
  readonly intercept: number;
}

/**
 * The Theil–Sen line: the median of the slopes of all pairs, with Sen's interval by ranks. P. K. Sen,
 * "Estimates of the regression coefficient based on Kendall's tau", J. Am. Stat. Assoc. 63 (1968)
 * 1379. Null for fewer than two different x.
 *
 * @param sigmas half width of the interval in standard deviations (1.2816 for 80 %)
 */
export const theilSen = (
  x: readonly number[],
  y: readonly number[],
  sigmas: number,
): SlopeEstimate | null => {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      if (x[i] !== x[j]) slopes.push((y[j]! - y[i]!) / (x[j]! - x[i]!));
    }
  }
  if (slopes.length === 0) return null;
  slopes.sort((a, b) => a - b);
  const n = x.length;
  // Variance of Kendall's S without ties.
  const reach = sigmas * Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const lower = Math.max(Math.round((slopes.length - reach) / 2) - 1, 0);
  const upper = Math.min(Math.round((slopes.length + reach) / 2), slopes.length - 1);
  const slope = median(slopes);
  const intercept = median(y.map((value, i) => value - slope * x[i]!));
  return { slope, low: slopes[lower]!, high: slopes[upper]!, intercept };
};
