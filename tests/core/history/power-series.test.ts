import { describe, expect, test } from 'vitest';
import { coupleSteps } from '../../../core/history/couple-steps.ts';
import { powerSeries } from '../../../core/history/power-series.ts';
import { ofPowers } from '../../builders/histories.ts';

const values = (powers: readonly (number | null)[]) => powerSeries(ofPowers(powers), []);

describe('power on one scale', () => {
  test('is 1 for the first three firings that could tell', () => {
    const series = values([null, 2, 2.02, 1.98, 1.8]);
    expect(series.references).toEqual([1, 2, 3]);
    expect(series.relative[0]).toBeNull();
    expect(series.relative[4]!.value).toBeCloseTo(0.9, 3);
    expect(series.relative[4]!.low / series.relative[4]!.value).toBeCloseTo(0.975, 6);
  });

  test('begins anew with new elements', () => {
    const series = values([1, 0.99, 0.98, 0.97, 0.96, 0.95, 1.1, 1.09, 1.08, 1.07]);
    expect(series.steps).toMatchObject([{ kind: 'restored', firing: 6 }]);
    expect(series.current.map(({ firing }) => firing)).toEqual([6, 7, 8, 9]);
  });

  test('goes on from where a lost element left it', () => {
    const series = values([1, 0.995, 0.99, 0.985, 0.82, 0.815, 0.81, 0.805]);
    expect(series.steps).toMatchObject([{ kind: 'lost', firing: 4 }]);
    expect(series.relative[0]!.value).toBeCloseTo(1.005, 2);
    // All on the last scale: 0.5 % a firing is all that is left.
    const [first] = series.current;
    expect(first!.power).toBeCloseTo(0.805 + 7 * 0.005, 2);
  });

  test('is re-based, not mixed, where the couple changed', () => {
    const powers = [1, 0.995, 0.99, 0.985, 0.89, 0.885, 0.88, 0.875];
    const entries = ofPowers(powers, (i) => ({
      coupleError: i < 4 ? { value: 0, low: -5, high: 5 } : { value: 40, low: 35, high: 45 },
    }));
    const series = powerSeries(entries, coupleSteps(entries));
    expect(series.steps).toMatchObject([{ kind: 'couple', firing: 4, coupleDeltaC: 40 }]);
    expect(series.current).toHaveLength(8);
    // The readings before are moved onto the new couple’s scale: one line without a step.
    expect(series.relative[3]!.value).toBeCloseTo(series.relative[4]!.value + 0.005, 1);
    expect(series.relative[0]!.value - series.relative[7]!.value).toBeLessThan(0.06);
  });

  test('of no firing that could tell is nothing', () => {
    expect(values([null, null])).toMatchObject({ references: [], current: [], steps: [] });
  });
});
