import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averaged, minMaxIndices } from '../../../core/trace/thin.ts';

const curve = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 0, max: 1300 })), {
    minLength: 2,
    maxLength: 300,
  })
  .map((steps) => {
    let at = 0;
    const atSeconds = Float64Array.from(steps, ([step]) => (at += step));
    return { atSeconds, celsius: Float64Array.from(steps, ([, celsius]) => celsius) };
  });

describe('averaging', () => {
  it('keeps a straight climb straight and leaves gaps empty', () => {
    const atSeconds = Float64Array.from({ length: 1000 }, (_, i) =>
      i < 500 ? 10 * i : 10 * i + 20_000,
    );
    const celsius = atSeconds.map((at) => 20 + at / 36);
    const thin = averaged(atSeconds, celsius, 100);
    expect(thin.atSeconds.length).toBeLessThanOrEqual(100);
    thin.atSeconds.forEach((at, i) => {
      expect(thin.celsius[i]).toBeCloseTo(20 + at / 36, 6);
    });
    expect(thin.atSeconds.some((at) => at > 5100 && at < 24_900)).toBe(false);
  });

  it('gives a short curve back as it is', () => {
    const atSeconds = Float64Array.of(0, 1, 2);
    expect(averaged(atSeconds, atSeconds, 10).atSeconds).toBe(atSeconds);
  });
});

describe('min–max thinning', () => {
  it('loses neither peak nor dip nor end, and keeps to its count', () => {
    fc.assert(
      fc.property(curve, fc.integer({ min: 10, max: 60 }), ({ atSeconds, celsius }, count) => {
        const indices = minMaxIndices(atSeconds, celsius, count);
        const shown = indices.map((i) => celsius[i]!);
        expect(indices.length).toBeLessThanOrEqual(Math.max(count, 2));
        expect(Math.max(...shown)).toBe(Math.max(...celsius));
        expect(Math.min(...shown)).toBe(Math.min(...celsius));
        expect(indices[0]).toBe(0);
        expect(indices.at(-1)).toBe(celsius.length - 1);
      }),
    );
  });
});
