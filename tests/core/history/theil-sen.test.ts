import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { theilSen } from '../../../core/history/theil-sen.ts';

describe('the Theil–Sen line', () => {
  test('is that of Sen’s own example', () => {
    // P. K. Sen (1968), J. Am. Stat. Assoc. 63, 1379: slope 4, 93 % interval 3.71 to 4.38. The same
    // figures stand in the tests of SciPy's stats.theilslopes (whose `joint` intercept is 6).
    const x = [1, 2, 3, 4, 10, 12, 18];
    const y = [9, 15, 19, 20, 45, 55, 78];
    const line = theilSen(x, y, 1.8119)!; // Φ⁻¹(0.965)
    expect(line.slope).toBeCloseTo(4, 10);
    expect(line.low).toBeCloseTo(3.71, 2);
    expect(line.high).toBeCloseTo(4.38, 2);
    expect(line.intercept).toBeCloseTo(6, 10);
  });

  test('through 0, 1, 1 rises by a half (SciPy’s tests)', () => {
    expect(theilSen([0, 1, 2], [0, 1, 1], 1.96)!.slope).toBe(0.5);
  });

  test('is that of points on a line, one of them wild', () => {
    const x = [0, 1, 2, 3, 4, 5, 6];
    const y = x.map((value) => 2 - 0.5 * value);
    y[3] = 40;
    expect(theilSen(x, y, 1.28)!.slope).toBeCloseTo(-0.5, 10);
  });

  test('does not exist for one x', () => {
    expect(theilSen([], [], 1)).toBeNull();
    expect(theilSen([3, 3], [1, 2], 1)).toBeNull();
  });

  test('lies within its interval', () => {
    const values = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), {
      minLength: 2,
      maxLength: 20,
    });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 3, noNaN: true }), (y, sigmas) => {
        const line = theilSen(Array.from(y.keys()), y, sigmas)!;
        expect(line.low).toBeLessThanOrEqual(line.slope);
        expect(line.high).toBeGreaterThanOrEqual(line.slope);
      }),
    );
  });
});
