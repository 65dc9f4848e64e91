import { describe, expect, test } from 'vitest';
import {
  errorBelief,
  errorQuantile,
  type ErrorSources,
} from '../../../core/heatwork/error-belief.ts';

const only = (sources: Partial<ErrorSources>): ErrorSources => ({
  toleranceC: 9,
  modelSigmaC: 0,
  unseenCoolerC: 0,
  unseenHotterC: 0,
  places: [],
  ...sources,
});

const range = (sources: ErrorSources): [number, number] => {
  const belief = errorBelief(sources);
  return [errorQuantile(belief, 0.1), errorQuantile(belief, 0.9)];
};

/** A place whose cones agree with one error, give or take. */
const place =
  (atC: number, sigmaC = 2) =>
  (errorC: number) =>
    Math.exp(-(((errorC - atC) / sigmaC) ** 2) / 2) + 1e-6;

describe('what is believed of the error', () => {
  test('adds up to one', () => {
    for (const sources of [only({}), only({ modelSigmaC: 3, places: [place(-20), place(4)] })]) {
      const { weights } = errorBelief(sources);
      expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 10);
    }
  });

  test('of a couple alone is uniform: four fifths of it within four fifths of its tolerance', () => {
    const [low, high] = range(only({}));
    expect(low).toBeCloseTo(-7.2, 1);
    expect(high).toBeCloseTo(7.2, 1);
  });

  test('of the model alone is normal: ±1.2816 deviations', () => {
    const [low, high] = range(only({ toleranceC: 1e-3, modelSigmaC: 5 }));
    expect(low).toBeCloseTo(-6.41, 1);
    expect(high).toBeCloseTo(6.41, 1);
  });

  test('widens with each source', () => {
    const width = (sources: Partial<ErrorSources>): number => {
      const [low, high] = range(only(sources));
      return high - low;
    };
    expect(width({ modelSigmaC: 3 })).toBeGreaterThan(width({}));
    expect(width({ unseenHotterC: 10 })).toBeGreaterThan(width({}) + 1.5);
  });

  test('takes unseen heat as a reading that is too low', () => {
    const [low, high] = range(only({ toleranceC: 0.5, unseenHotterC: 20 }));
    expect(low).toBeLessThan(-12);
    expect(high).toBeLessThan(1);
  });

  test('follows a witness cone, inside the class and beyond it', () => {
    for (const atC of [4, -30]) {
      const belief = errorBelief(only({ modelSigmaC: 2, places: [place(atC)] }));
      expect(Math.abs(errorQuantile(belief, 0.5) - atC)).toBeLessThan(1.5);
      expect(errorQuantile(belief, 0.9) - errorQuantile(belief, 0.1)).toBeLessThan(7);
    }
  });

  test('spans places that do not agree', () => {
    const belief = errorBelief(only({ modelSigmaC: 2, places: [place(-20), place(5)] }));
    expect(errorQuantile(belief, 0.1)).toBeLessThan(-18);
    expect(errorQuantile(belief, 0.9)).toBeGreaterThan(4);
  });
});
