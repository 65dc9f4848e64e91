import type { PowerTrend } from '../model/history.ts';
import { mannKendall } from './mann-kendall.ts';
import { theilSen } from './theil-sen.ts';

/** Fewer firings cannot show a fall: of four in any order one in 24 falls all the way. */
export const FEWEST_FOR_TREND = 4;
/** Half an 80 % interval of the normal distribution, in standard deviations. */
const NORMAL_80 = 1.2816;

/** Relative power of one firing, by its place in the history. */
export interface PowerPoint {
  readonly firing: number;
  readonly power: number;
}

/** The drift of relative power over the firings of one set of elements; null for too few. */
export const trendOf = (points: readonly PowerPoint[]): PowerTrend | null => {
  if (points.length < FEWEST_FOR_TREND) return null;
  const x = points.map(({ firing }) => firing);
  const y = points.map(({ power }) => power);
  const line = theilSen(x, y, NORMAL_80);
  if (line === null) return null;
  return {
    perFiringPercent: 100 * line.slope,
    low: 100 * line.low,
    high: 100 * line.high,
    chance: mannKendall(y).chanceOfFall,
    nowPower: line.intercept + line.slope * x.at(-1)!,
    firings: points.length,
    since: x[0]!,
  };
};

/** Relative power by a trend at a firing. */
export const powerByTrend = (
  { nowPower, perFiringPercent }: PowerTrend,
  lastFiring: number,
  firing: number,
): number => nowPower - (perFiringPercent / 100) * (lastFiring - firing);
