import { describe, expect, test } from 'vitest';
import { likelihoodByPlace } from '../../../core/heatwork/observed-cones.ts';
import type { ObservedCone } from '../../../core/model/options.ts';

const seen = (cone: ObservedCone['cone'], place: string, bendDegrees: number): ObservedCone => ({
  cone,
  place,
  bendDegrees,
});

/** As if cone 6 were exactly down as read, cone 7 20 °C later. */
const marginWith = ({ cone }: ObservedCone, errorC: number): number =>
  (cone === '6' ? 0 : -20) - errorC;

describe('witness cones', () => {
  test('of one place must all agree', () => {
    const [shelf] = likelihoodByPlace(
      [seen('6', 'middle', 90), seen('7', 'Middle ', 0)],
      marginWith,
    );
    expect(shelf!(0)).toBeGreaterThan(0.4);
    expect(shelf!(-20)).toBeLessThan(0.01);
    expect(shelf!(15)).toBeLessThan(0.01);
  });

  test('of several places speak for themselves', () => {
    const places = likelihoodByPlace([seen('6', 'top', 90), seen('6', 'bottom', 30)], marginWith);
    expect(places).toHaveLength(2);
    expect(places[0]!(0)).toBeCloseTo(1, 6);
    expect(places[1]!(15)).toBeCloseTo(1, 1);
  });

  test('are looked up straight between margins that are four degrees apart', () => {
    const asked: number[] = [];
    const [place] = likelihoodByPlace([seen('6', 'top', 90)], (_, errorC) => {
      asked.push(errorC);
      return -errorC;
    });
    for (let errorC = -8; errorC <= 8; errorC += 0.25) place!(errorC);
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked).toHaveLength(5);
  });
});
