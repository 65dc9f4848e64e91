import { describe, expect, test } from 'vitest';
import { powerByTrend, trendOf } from '../../../core/history/trend.ts';

const falling = (n: number) =>
  Array.from({ length: n }, (_, i) => ({ firing: 3 + 2 * i, power: 1 - 0.02 * i }));

describe('the trend of power', () => {
  test('is its change a firing, in percent, and what it comes to at the last', () => {
    const trend = trendOf(falling(6))!;
    expect(trend.perFiringPercent).toBeCloseTo(-1, 10);
    expect(trend.nowPower).toBeCloseTo(0.9, 10);
    expect(trend).toMatchObject({ firings: 6, since: 3 });
    // Six in one order: 1 in 720.
    expect(trend.chance).toBeCloseTo(1 / 720, 10);
    expect(powerByTrend(trend, 13, 3)).toBeCloseTo(1, 10);
  });

  test('is unknown of three firings', () => {
    expect(trendOf(falling(3))).toBeNull();
    expect(trendOf(falling(4))).not.toBeNull();
  });
});
