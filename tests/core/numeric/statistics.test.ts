import fc from 'fast-check';
import * as library from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  mean,
  median,
  medianAbsoluteDeviation,
  quantile,
  robustSigma,
  spreadIndices,
} from '../../../core/numeric/statistics.ts';

const samples = fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 1 });

describe('robust statistics, against simple-statistics', () => {
  it('finds the same mean', () => {
    fc.assert(
      fc.property(samples, (values) => {
        expect(mean(values)).toBeCloseTo(library.mean(values), 6);
      }),
    );
  });

  it('finds the same median', () => {
    fc.assert(
      fc.property(samples, (values) => {
        expect(median(values)).toBeCloseTo(library.median(values), 6);
      }),
    );
  });

  it('finds the same median absolute deviation', () => {
    fc.assert(
      fc.property(samples, (values) => {
        expect(medianAbsoluteDeviation(values)).toBeCloseTo(
          library.medianAbsoluteDeviation(values),
          6,
        );
      }),
    );
  });

  it('scales it to the standard deviation of normal data by 1/Φ⁻¹(3/4)', () => {
    expect(robustSigma([-1, 0, 1, -1, 1])).toBeCloseTo(1 / library.probit(0.75), 2);
  });
});

describe('quantiles', () => {
  it('interpolates between order statistics (type 7 of Hyndman & Fan, Am. Stat. 50 (1996) 361)', () => {
    expect(quantile([10, 20, 30, 40], 0.25)).toBe(17.5);
    expect(quantile([7], 0.9)).toBe(7);
  });

  it('of nothing are not a number', () => {
    expect(quantile([], 0.5)).toBeNaN();
  });
});

describe('spread indices', () => {
  it('cover a long list evenly and a short one wholly', () => {
    expect(spreadIndices(3, 10)).toEqual([0, 1, 2]);
    const spread = spreadIndices(1000, 10);
    expect(spread).toHaveLength(10);
    expect(spread.at(-1)).toBeGreaterThanOrEqual(900);
  });
});
