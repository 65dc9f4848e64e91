import { probit } from 'simple-statistics';
import type { Forecast, PowerTrend } from '../model/history.ts';
import type { PowerPoint } from './trend.ts';

/** Common practice: elements are replaced at 10 % more resistance, so at 1/1.1 of their power. */
export const USUAL_REPLACEMENT_POWER = 1 / 1.1;

/** Fewer firings give a slope too unsure to be drawn out (chosen). */
const FEWEST = 6;
/** The trend must be no chance before it is drawn out (chosen). */
const MOST_CHANCE = 0.1;
/** Two firings of one kiln differ by at least so much, as a share of its power (chosen). */
const LEAST_SCATTER = 0.01;
/**
 * Wear need not go on as it went: the slope to come may differ from the slope so far by this share,
 * as a standard deviation (chosen; elements age faster towards their end, or slower once oxidised).
 */
const CHANGE_OF_PACE = 0.18;
/** A range wider than this either way, as a share of the estimate, is no forecast (chosen). */
const WIDEST_SHARE = 1;
const LOW_SHARE = 0.1;
const HIGH_SHARE = 0.9;
/** Points on each axis over which slope, level and pace are weighed. */
const POINTS = 21;

/** Even quantiles of the standard normal distribution. */
const NORMALS = Array.from({ length: POINTS }, (_, i) => probit((i + 0.5) / POINTS));

interface Scatter {
  readonly slope: number;
  /** Of the level in the middle of the firings, which is independent of the slope. */
  readonly middle: number;
  readonly middleAt: number;
}

/** Standard errors of the straight line through some points, with Student's excess for few of them. */
const scatterOf = (points: readonly PowerPoint[], trend: PowerTrend): Scatter => {
  const n = points.length;
  const slope = trend.perFiringPercent / 100;
  const last = points.at(-1)!.firing;
  const middleAt = points.reduce((sum, { firing }) => sum + firing, 0) / n;
  const along = points.reduce((sum, { firing }) => sum + (firing - middleAt) ** 2, 0);
  const squares = points.reduce(
    (sum, { firing, power }) => sum + (power - trend.nowPower - slope * (firing - last)) ** 2,
    0,
  );
  const freedom = n - 2;
  const scatter = Math.max(LEAST_SCATTER, Math.sqrt(squares / freedom));
  // Student's distribution is wider than the normal by about this at 80 % (1 + (z² + 1) / 4ν).
  const excess = 1 + (1.2816 ** 2 + 1) / (4 * freedom);
  return {
    slope: (excess * scatter) / Math.sqrt(along),
    middle: (excess * scatter) / Math.sqrt(n),
    middleAt,
  };
};

const quantileOf = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;

/** Firings left for every likely slope, level and change of pace, in ascending order. */
const firingsLeft = (
  points: readonly PowerPoint[],
  trend: PowerTrend,
  limitPower: number,
): number[] => {
  const scatter = scatterOf(points, trend);
  const last = points.at(-1)!.firing;
  const slope = trend.perFiringPercent / 100;
  const middle = trend.nowPower - slope * (last - scatter.middleAt);
  const left: number[] = [];
  for (const a of NORMALS) {
    const likelySlope = slope + a * scatter.slope;
    for (const b of NORMALS) {
      const now = middle + b * scatter.middle + likelySlope * (last - scatter.middleAt);
      for (const c of NORMALS) {
        const pace = likelySlope * Math.exp(c * CHANGE_OF_PACE);
        const over = now - limitPower;
        left.push(over <= 0 ? 0 : pace < 0 ? over / -pace : Infinity);
      }
    }
  }
  return left.sort((x, y) => x - y);
};

/**
 * How many firings are left until power is below a limit, as an 80 % range, or why that is not yet to
 * be told.
 *
 * @param limitPower on the scale of relative power; null where no firing shows what the last ramp needs
 */
export const forecastOf = (
  points: readonly PowerPoint[],
  trend: PowerTrend | null,
  limitPower: number | null,
): Forecast => {
  const limit = {
    limitKind: limitPower === null ? 'usual-replacement' : 'last-ramp',
    limitPower: limitPower ?? USUAL_REPLACEMENT_POWER,
  } as const;
  const notYet = (reason: string): Forecast => ({ firings: null, reason, ...limit });
  // Whatever the trend: a kiln that is below already has none left.
  if (trend !== null && trend.nowPower <= limit.limitPower) {
    return { firings: { estimate: 0, low: 0, high: 0 }, reason: null, ...limit };
  }
  if (trend === null || points.length < FEWEST) return notYet('too-few-firings');
  if (trend.chance > MOST_CHANCE || trend.perFiringPercent >= 0) return notYet('no-clear-fall');
  const left = firingsLeft(points, trend, limit.limitPower);
  const range = {
    estimate: quantileOf(left, 0.5),
    low: quantileOf(left, LOW_SHARE),
    high: quantileOf(left, HIGH_SHARE),
  };
  const isWide = range.high - range.low > 2 * WIDEST_SHARE * Math.max(range.estimate, 1);
  if (!Number.isFinite(range.high) || isWide) return notYet('range-too-wide');
  return { firings: range, reason: null, ...limit };
};
