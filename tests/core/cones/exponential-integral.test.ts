import { describe, expect, test } from 'vitest';
import { scaledE2 } from '../../../core/cones/exponential-integral.ts';

describe('eˣ·E₂(x)', () => {
  test.each([
    // E₁ from Abramowitz and Stegun, table 5.1 and 5.2 (from memory), and E₂ = e⁻ˣ − x·E₁.
    [1, 0.21938393439552],
    [2, 0.048900510708061],
    [10, 4.156968929685324e-6],
  ])('at x = %d is that of the tables', (x, e1) => {
    expect(scaledE2(x)).toBeCloseTo(Math.exp(x) * (Math.exp(-x) - x * e1), 9);
  });

  test.each([25, 56, 130])('at x = %d is that of a fine sum over its defining integral', (x) => {
    // Substituting t = 1 + s/x: eˣ·E₂(x) = (1/x)·∫₀^∞ e⁻ˢ/(1 + s/x)² ds, here by Simpson's rule.
    const [end, panels] = [60, 60_000];
    const width = end / panels;
    let sum = 0;
    for (let i = 0; i <= panels; i += 1) {
      const s = i * width;
      const weight = i === 0 || i === panels ? 1 : i % 2 === 1 ? 4 : 2;
      sum += (weight * Math.exp(-s)) / (1 + s / x) ** 2;
    }
    expect(scaledE2(x) / ((sum * width) / 3 / x) - 1).toBeCloseTo(0, 12);
  });
});
