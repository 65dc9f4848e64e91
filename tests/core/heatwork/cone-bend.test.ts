import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bendLikelihood, marginOfBend } from '../../../core/heatwork/cone-bend.ts';

describe('a witness cone’s bend', () => {
  test('takes 25 °C from straight to down, the last stages 5 (reference notes, seen)', () => {
    expect(marginOfBend(0)).toBe(-25);
    expect(marginOfBend(60)).toBe(-5);
    expect(marginOfBend(90)).toBe(0);
  });

  test('more bend is never less heat-work', () => {
    const bend = fc.double({ min: 0, max: 180, noNaN: true });
    fc.assert(
      fc.property(bend, bend, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(marginOfBend(more)).toBeGreaterThanOrEqual(marginOfBend(less));
      }),
    );
  });

  test('agrees best with its own margin', () => {
    for (const bend of [20, 45, 90]) {
      const best = bendLikelihood(bend, marginOfBend(bend));
      expect(best).toBeCloseTo(1, 10);
      expect(bendLikelihood(bend, marginOfBend(bend) - 8)).toBeLessThan(best / 2);
      expect(bendLikelihood(bend, marginOfBend(bend) + 8)).toBeLessThan(best / 2);
    }
  });

  test('upright says at most, and past the end point says at least', () => {
    expect(bendLikelihood(0, -200)).toBe(1);
    expect(bendLikelihood(0, 0)).toBeLessThan(0.01);
    expect(bendLikelihood(120, 60)).toBe(1);
    expect(bendLikelihood(120, -20)).toBeLessThan(0.01);
  });

  test('never rules out any heat-work: a cone may be misread', () => {
    expect(bendLikelihood(90, -300)).toBeGreaterThan(0);
  });
});
