import { describe, expect, test } from 'vitest';
import type { ObservedCone } from '../../../core/model/options.ts';
import { cone6, measure } from './measuring.ts';

const seen = (cone: ObservedCone['cone'], place: string, bendDegrees: number): ObservedCone => ({
  cone,
  place,
  bendDegrees,
});

const errorOf = (topC: number, observedCones: readonly ObservedCone[]) =>
  measure(cone6(topC), { target: '6', observedCones }).coupleErrorC!;

// Cone 6 goes down at 1222 °C at 60 °C/h (the published chart): a couple that shows 1222 and cones
// that say so agree.
describe('the couple’s error by the cones of each place', () => {
  test('is the whole error where there is one place', () => {
    const error = errorOf(1222, [seen('6', 'middle', 90), seen('7', 'Middle ', 20)]);
    expect(error.byPlace).toHaveLength(1);
    expect(error.byPlace[0]).toMatchObject({ place: 'middle', estimate: error.estimate });
    expect(error.oneOffset).toBeNull();
  });

  test('is one offset where every place says the same', () => {
    const error = errorOf(1245, [seen('6', 'top', 90), seen('6', 'bottom', 80)]);
    expect(error.oneOffset).toBe(true);
    // 1245 − 1222 = 23 °C by the chart, and some degrees more for the dose of the cooling.
    for (const { estimate } of error.byPlace) {
      expect(estimate).toBeGreaterThan(23);
      expect(estimate).toBeLessThan(35);
    }
  });

  test('is none where one place had two cones more than the other', () => {
    // 8 is down at 1249 °C and 5 at 1186 °C on the same chart at 60 °C/h: some 50 °C apart.
    const error = errorOf(1222, [
      seen('8', 'top', 90),
      seen('5', 'bottom', 90),
      seen('6', 'bottom', 10),
    ]);
    expect(error.oneOffset).toBe(false);
    const [top, bottom] = error.byPlace;
    expect(top!.estimate).toBeLessThan(-10);
    expect(bottom!.estimate).toBeGreaterThan(5);
  });
});
