import { describe, expect, test } from 'vitest';
import { coupleSteps } from '../../../core/history/couple-steps.ts';
import { entry } from '../../builders/histories.ts';

const withErrors = (...errors: readonly (number | null)[]) =>
  errors.map((value, i) =>
    entry(i, {
      coupleError: value === null ? null : { value, low: value - 5, high: value + 5 },
    }),
  );

describe('a step of the couple', () => {
  test('is where the cones of two firings part for good', () => {
    // Question 11: a new couple, and the same cone bends 117 °F (65 °C) higher on the readout.
    expect(coupleSteps(withErrors(-45, -43, null, 20, 22))).toEqual([
      { kind: 'couple', firing: 3, powerPercent: null, coupleDeltaC: 63 },
    ]);
  });

  test('is none where a couple drifts little by little, or by less than half a cone', () => {
    expect(coupleSteps(withErrors(0, -5, -10, -15, -20, -25))).toEqual([]);
    expect(coupleSteps(withErrors(0, 9.9))).toEqual([]);
    expect(coupleSteps(withErrors(0, 10.1))).toHaveLength(1);
  });

  test('is none where one firing’s cones are taken back by the next', () => {
    expect(coupleSteps(withErrors(0, 30, 1, 2))).toEqual([]);
  });

  test('is unknown without cones', () => {
    expect(coupleSteps(withErrors(null, null))).toEqual([]);
  });
});
