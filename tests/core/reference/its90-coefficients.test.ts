import { describe, expect, test } from 'vitest';
import { ITS90_CHECK_VALUES } from '../../../core/reference/its90-check-values.ts';
import {
  ITS90_COEFFICIENTS,
  TYPE_K_EXPONENTIAL,
} from '../../../core/reference/its90-coefficients.ts';
import { againstShared, pairsOf } from './shared-reference.ts';

const TYPES = ['B', 'E', 'J', 'K', 'N', 'R', 'S', 'T'] as const;

/** Summed term by term here, so that the table is checked and not a routine of the project. */
const millivolts = (type: (typeof TYPES)[number], atC: number): number => {
  const range = ITS90_COEFFICIENTS[type].find(({ fromC, toC }) => atC >= fromC && atC <= toC)!;
  const polynomial = range.coefficients.reduce((sum, c, power) => sum + c * atC ** power, 0);
  const { amplitude, exponent, centreC } = TYPE_K_EXPONENTIAL;
  const bump = type === 'K' && atC > 0 ? amplitude * Math.exp(exponent * (atC - centreC) ** 2) : 0;
  return polynomial + bump;
};

describe('the ITS-90 coefficients', () => {
  againstShared('hold every number of the copy', 'its90_coefficients.json', (text) => {
    const copied = Object.fromEntries(
      TYPES.map((type) => [
        type,
        ITS90_COEFFICIENTS[type].map((p) => [p.fromC, p.toC, p.coefficients]),
      ]),
    );
    expect(copied).toEqual(JSON.parse(text));
  });

  test.each(TYPES)('give the printed EMF of type %s to the printed digit', (type) => {
    for (const [atC, printed] of ITS90_CHECK_VALUES[type]) {
      expect(Math.abs(millivolts(type, atC) - printed)).toBeLessThanOrEqual(0.00051);
    }
  });

  test.each(TYPES)('join where the ranges of type %s meet', (type) => {
    for (const [lower, upper] of pairsOf(ITS90_COEFFICIENTS[type])) {
      expect(upper.fromC).toBe(lower.toC);
      const either = [millivolts(type, lower.toC - 1e-9), millivolts(type, upper.fromC + 1e-9)];
      expect(either[1]).toBeCloseTo(either[0]!, 4);
    }
  });
});
