import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendDegrees } from '../../../../core/report/chart/bend.ts';

describe('a cone’s bend', () => {
  // The trade's description (reference notes, seen): straight to fully down takes about 20–30 °C,
  // the last stages about 5 °C; the end point is the tip level with the base, 90°.
  it('is none more than 30 °C short of its end point, and 90° at it', () => {
    expect(bendDegrees(0.2, -31)).toBe(0);
    expect(bendDegrees(1, 0)).toBe(90);
  });

  it('does its last stages within about 5 °C', () => {
    expect(bendDegrees(0.9, -5)).toBeGreaterThan(45);
    expect(bendDegrees(0.9, -5)).toBeLessThan(75);
  });

  it('never falls as heat-work grows', () => {
    const margin = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(margin, margin, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(bendDegrees(1, less)).toBeLessThanOrEqual(bendDegrees(1, more));
      }),
    );
  });

  it('goes by the dose where the margin is beyond telling', () => {
    expect(bendDegrees(1e6, null)).toBeGreaterThan(90);
    expect(bendDegrees(1e-6, null)).toBe(0);
  });
});
