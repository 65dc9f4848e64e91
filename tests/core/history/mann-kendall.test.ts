import { describe, expect, test } from 'vitest';
import { mannKendall } from '../../../core/history/mann-kendall.ts';

/** All orders of 0 … n − 1. */
const orders = (n: number): number[][] =>
  n === 0
    ? [[]]
    : orders(n - 1).flatMap((order) =>
        Array.from({ length: n }, (_, at) => [...order.slice(0, at), n - 1, ...order.slice(at)]),
      );

describe('the Mann–Kendall test', () => {
  test.each([
    // R. O. Gilbert, Statistical Methods for Environmental Pollution Monitoring (1987), table A18:
    // one-sided chances of S for small n (from memory; the enumeration below holds them too).
    [[4, 3, 2, 1], -6, 0.042],
    [[4, 3, 1, 2], -4, 0.167],
    [[5, 4, 3, 2, 1], -10, 0.0083],
    [[5, 4, 3, 1, 2], -8, 0.042],
    [[5, 4, 1, 2, 3], -4, 0.242],
    // Hollander and Wolfe, Nonparametric Statistical Methods, example 9.1: C = −6, P = 0.117 (memory).
    [[1.26, 1.27, 1.12, 1.16, 1.03], -6, 0.117],
  ])('of %j has S %d and a chance of %d', (values, s, chance) => {
    const test = mannKendall(values);
    expect(test.s).toBe(s);
    expect(test.chanceOfFall).toBeCloseTo(chance, 3);
  });

  test('counts what all orders of six values give', () => {
    const all = orders(6).map((order) => mannKendall(order));
    expect(all).toHaveLength(720);
    for (const { s, chanceOfFall } of all.slice(0, 40)) {
      const asLow = all.filter((other) => other.s <= s).length / all.length;
      expect(chanceOfFall).toBeCloseTo(asLow, 10);
    }
  });

  test('takes the normal for many values, and for ties', () => {
    // n = 12, all falling: S = −66, variance 12·11·29/18 = 212.67, z = −65/14.583 = −4.457, and
    // Φ(−4.457) = 4.2e-6.
    const falling = Array.from({ length: 12 }, (_, i) => -i);
    expect(mannKendall(falling).chanceOfFall).toBeCloseTo(4.2e-6, 6);
    // n = 4 with one pair of ties: variance (4·3·13 − 2·1·9)/18 = 7.667; S = −5, z = −4/2.769.
    const tied = mannKendall([3, 2, 2, 1]);
    expect(tied.s).toBe(-5);
    expect(tied.chanceOfFall).toBeCloseTo(0.0743, 3);
  });

  test('of values that are all the same shows nothing', () => {
    expect(mannKendall([1, 1, 1]).chanceOfFall).toBeCloseTo(0.5, 6);
  });
});
