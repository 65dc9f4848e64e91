import { describe, expect, it } from 'vitest';
import { estimateNoise, estimateResolution } from '../../../core/trace/noise.ts';
import { seededRandom } from '../../builders/random.ts';

const climb = (sigmaC: number, stepC: number, count = 3000) => {
  const random = seededRandom(5);
  const atSeconds = Float64Array.from({ length: count }, (_, i) => 20 * i + 8 * random.uniform());
  const celsius = atSeconds.map((at) => {
    const reading = 20 + (120 * at) / 3600 + sigmaC * random.normal();
    return stepC > 0 ? Math.round(reading / stepC) * stepC : reading;
  });
  return { atSeconds, celsius };
};

describe('noise', () => {
  it.each([0.2, 0.6, 1.2])('of %s °C is found within a tenth', (sigmaC) => {
    const { atSeconds, celsius } = climb(sigmaC, 0);
    expect(estimateNoise(atSeconds, celsius) / sigmaC).toBeGreaterThan(0.9);
    expect(estimateNoise(atSeconds, celsius) / sigmaC).toBeLessThan(1.1);
  });

  it('of readings rounded to 1 °C is at least the rounding alone: 1/√12 (uniform distribution)', () => {
    const { atSeconds, celsius } = climb(0.05, 1);
    expect(estimateNoise(atSeconds, celsius)).toBeGreaterThan(0.8 / Math.sqrt(12));
    expect(estimateNoise(atSeconds, celsius)).toBeLessThan(1.6 / Math.sqrt(12));
  });

  it('of a steady record is nothing, and of two readings unknowable and so nothing', () => {
    const atSeconds = Float64Array.from({ length: 50 }, (_, i) => i);
    expect(estimateNoise(atSeconds, new Float64Array(50).fill(600))).toBe(0);
    expect(estimateNoise(Float64Array.of(0, 1), Float64Array.of(5, 9))).toBe(0);
    // Five readings of one firing, three hours apart: the bend at the peak is no noise.
    const typed = Float64Array.of(20, 387, 924, 1220, 200);
    expect(
      estimateNoise(
        typed.map((_, i) => i * 10_800),
        typed,
      ),
    ).toBe(0);
  });
});

describe('resolution', () => {
  it.each([
    [1, 1],
    [0.1, 0.1],
    [5 / 9, 5 / 9],
  ])('of %s °C is found', (stepC, expected) => {
    expect(estimateResolution(climb(0.4, stepC).celsius)).toBeCloseTo(expected, 6);
  });

  it('of unrounded readings is none', () => {
    expect(estimateResolution(climb(0.4, 0).celsius)).toBe(0);
  });
});
