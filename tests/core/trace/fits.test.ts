import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { StretchFits } from '../../../core/trace/fits.ts';

const curve = fc
  .array(
    fc.tuple(fc.integer({ min: 1, max: 600 }), fc.double({ min: -50, max: 1300, noNaN: true })),
    {
      minLength: 6,
      maxLength: 80,
    },
  )
  .map((steps) => {
    let at = 0;
    return steps.map(([step, celsius]) => [(at += step), celsius] as const);
  });

const columns = (points: readonly (readonly [number, number])[]) => ({
  atSeconds: points.map(([at]) => at),
  celsius: points.map(([, celsius]) => celsius),
});

describe('fits over any stretch of a curve', () => {
  it('agree with simple-statistics on the line of every stretch', () => {
    fc.assert(
      fc.property(curve, fc.nat(3), (points, from) => {
        const { atSeconds, celsius } = columns(points);
        const fit = new StretchFits(atSeconds, celsius).line(from, points.length);
        const stretch = points.slice(from).map(([at, value]) => [at / 3600, value]);
        const { m, b } = linearRegression(stretch);
        const squares = stretch.reduce((sum, [x, y]) => sum + (y! - m * x! - b) ** 2, 0);
        expect(fit.ratePerHour).toBeCloseTo(m, 3);
        expect(fit.squares / (1 + squares)).toBeCloseTo(squares / (1 + squares), 5);
      }),
    );
  });

  it('leave nothing over from a parabola, and never more than the line does', () => {
    fc.assert(
      fc.property(curve, (points) => {
        const { atSeconds, celsius } = columns(points);
        const fits = new StretchFits(atSeconds, celsius);
        expect(fits.parabolaSquares(0, points.length)).toBeLessThanOrEqual(
          fits.line(0, points.length).squares + 1e-6,
        );
        const bent = atSeconds.map((at) => 20 + 150 * (at / 3600) - 8 * (at / 3600) ** 2);
        expect(new StretchFits(atSeconds, bent).parabolaSquares(0, bent.length)).toBeLessThan(1e-4);
      }),
    );
  });

  it('measure squares about a level and about the mean', () => {
    const fits = new StretchFits([0, 60, 120], [9, 10, 14]);
    expect(fits.mean(0, 3)).toBeCloseTo(11, 9);
    expect(fits.squaresAbout(10, 0, 3)).toBeCloseTo(17, 9);
    expect(fits.squaresAbout(14, 2, 3)).toBeCloseTo(0, 9);
  });

  it('take a stretch without extent in time as level', () => {
    expect(new StretchFits([5, 5], [1, 3]).line(0, 2).ratePerHour).toBe(0);
  });
});
