import { describe, expect, test } from 'vitest';
import { findSteps } from '../../../core/history/steps.ts';
import { seededRandom } from '../../builders/random.ts';

const LIMITS = { least: 0.05, leastScatter: 0.016 };
const indices = (n: number) => Array.from({ length: n }, (_, i) => i);
const series = (n: number, level: (i: number) => number, seed = 3) => {
  const random = seededRandom(seed);
  return indices(n).map((i) => level(i) + 0.016 * random.normal());
};

describe('a step', () => {
  test('is found where it is, whatever drift there is besides', () => {
    const y = series(16, (i) => -0.004 * i + (i < 9 ? 0 : 0.15));
    const [step, ...more] = findSteps(indices(16), y, LIMITS);
    expect(more).toEqual([]);
    expect(step!.at).toBe(9);
    expect(Math.abs(step!.height - 0.15)).toBeLessThan(0.04);
  });

  test('may be one of several', () => {
    const y = series(24, (i) => (i >= 8 ? -0.2 : 0) + (i >= 16 ? 0.3 : 0));
    expect(findSteps(indices(24), y, LIMITS).map(({ at }) => at)).toEqual([8, 16]);
  });

  test('upwards is found also where loads scatter much, since wear alone never rises', () => {
    // Relative powers of a firing series on a test kiln whose elements were renewed after the sixth.
    const powers = [
      1.023, 1.004, 0.974, 0.957, 0.97, 0.924, 1.069, 1.068, 1.099, 1.051, 1.14, 1.093,
    ];
    const logs = powers.map(Math.log);
    expect(findSteps(indices(12), logs, LIMITS).map(({ at }) => at)).toEqual([6]);
    const fallen = findSteps(indices(12), [...logs].reverse(), LIMITS);
    expect(fallen.filter(({ height }) => height > 0)).toEqual([]);
  });

  test('is none within what firings scatter, nor in steady wear', () => {
    for (let seed = 1; seed <= 60; seed++) {
      expect(
        findSteps(
          indices(14),
          series(14, (i) => -0.01 * i, seed),
          LIMITS,
        ),
      ).toEqual([]);
    }
  });

  test('is not told just short of the least, nor of fewer than six firings', () => {
    const clean = (height: number, n: number) => indices(n).map((i) => (i < n / 2 ? 0 : height));
    const fine = { least: 0.05, leastScatter: 0.001 };
    expect(findSteps(indices(8), clean(0.051, 8), fine)).toHaveLength(1);
    expect(findSteps(indices(8), clean(0.049, 8), fine)).toEqual([]);
    expect(findSteps(indices(5), clean(0.5, 5), fine)).toEqual([]);
  });
});
