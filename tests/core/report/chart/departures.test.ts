import { describe, expect, it } from 'vitest';
import type { Curve } from '../../../../core/model/document.ts';
import { departuresIn, NOTABLE_DELTA_C } from '../../../../core/report/chart/departures.ts';

const curveOf = (differences: (number | null)[]): Curve =>
  ({
    atSeconds: differences.map((_, index) => index * 100),
    celsius: differences.map((difference) => 500 + (difference ?? 0)),
    slopeCPerHour: differences.map(() => 0),
    differenceC: differences,
  }) as Curve;

const found = (differences: (number | null)[]) =>
  departuresIn(curveOf(differences), [0, differences.length]);

describe('departures from the plan', () => {
  it('are those that matter, closed where the plan is crossed', () => {
    const [cold, ...rest] = found([5, -15, -15, 5]);
    expect(rest).toEqual([]);
    expect(cold).toMatchObject({ side: 'cold', largestDeltaC: 15, atSeconds: [25, 100, 200, 275] });
    expect(cold?.plannedC.every((value) => Math.abs(value - 500) < 1e-9)).toBe(true);
  });

  it('are none below the notable difference', () => {
    expect(found([0, NOTABLE_DELTA_C - 0.1, 0])).toEqual([]);
    expect(found([0, NOTABLE_DELTA_C, 0])).toHaveLength(1);
  });

  it('are told apart by side', () => {
    expect(found([20, 20, -20, -20]).map(({ side }) => side)).toEqual(['hot', 'cold']);
  });

  it('are none where the plan says nothing', () => {
    expect(found([null, null])).toEqual([]);
    expect(departuresIn({ ...curveOf([20, 20]), differenceC: null }, [0, 2])).toEqual([]);
  });
});
