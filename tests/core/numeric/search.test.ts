import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolate, lowerBound, picked } from '../../../core/numeric/search.ts';

describe('lower bound', () => {
  it('is the first index not below the value', () => {
    const ascending = fc
      .array(fc.integer({ min: 0, max: 50 }))
      .map((values) => values.sort((a, b) => a - b));
    fc.assert(
      fc.property(ascending, fc.integer({ min: -1, max: 51 }), (values, value) => {
        const expected = values.findIndex((candidate) => candidate >= value);
        expect(lowerBound(values, value)).toBe(expected < 0 ? values.length : expected);
      }),
    );
  });
});

describe('interpolation', () => {
  it('runs straight between points and holds the ends', () => {
    expect(interpolate([0, 10, 20], [100, 200, 0], 5)).toBe(150);
    expect(interpolate([0, 10, 20], [100, 200, 0], -5)).toBe(100);
    expect(interpolate([0, 10, 20], [100, 200, 0], 25)).toBe(0);
  });

  it('of no points is not a number', () => {
    expect(interpolate([], [], 1)).toBeNaN();
  });
});

describe('picking', () => {
  it('takes the values at the indices, in their order', () => {
    expect([...picked(Float64Array.of(5, 6, 7), Uint32Array.of(2, 0))]).toEqual([7, 5]);
  });
});
