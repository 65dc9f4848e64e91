import { describe, expect, test } from 'vitest';
import {
  coldEndC,
  distanceAtShiftC,
  mistakes,
  nearestToPlan,
  rereadC,
  thinned,
} from '../../../core/findings/reread.ts';

describe('a wire that was read as another', () => {
  // The shared reference notes, computed there from NIST's tables with the cold end at 25 °C.
  test.each([
    ['K', 'S', 321, 1222],
    ['S', 'K', 1150, 300],
    ['S', 'R', 1079, 1000],
  ] as const)('type %s set for %s wire: %d °C stands for %d', (readAs, wire, shown, truth) => {
    expect(Math.abs(rereadC({ readAs, wire }, shown, 25) - truth)).toBeLessThan(2.5);
  });

  test('shows the cold end’s own temperature at rest', () => {
    expect(rereadC({ readAs: 'K', wire: 'S' }, 25, 25)).toBeCloseTo(25, 4);
  });

  test('is none where a type does not reach', () => {
    expect(rereadC({ readAs: 'K', wire: 'S' }, 1300, 25)).toBeNaN();
  });

  test('may be any, or only one that was told', () => {
    expect(mistakes(undefined)).toHaveLength(6 * 5 - 5);
    expect(mistakes('S').every(({ wire, readAs }) => wire === 'S' && readAs !== 'S')).toBe(true);
  });
});

test('the cold end stood where the record begins, if that is a room', () => {
  expect(coldEndC(18)).toBe(18);
  expect(coldEndC(400)).toBe(25);
});

describe('the distance from a plan', () => {
  const plan = { atSeconds: [0, 3600, 7200], celsius: [20, 120, 220] };

  test('is the mean at the best shift in time', () => {
    expect(nearestToPlan(plan, plan)).toEqual({ deltaC: 0, shiftSeconds: 0 });
    const late = { ...plan, atSeconds: [3600, 7200, 10_800] };
    expect(nearestToPlan(late, plan)).toEqual({ deltaC: 0, shiftSeconds: 3600 });
    expect(distanceAtShiftC(late, plan, 0)).toBeCloseTo((0 + 100 + 100) / 3, 10);
    const steeper = { atSeconds: [0, 7200], celsius: [20, 820] };
    expect(nearestToPlan(steeper, plan).deltaC).toBeGreaterThan(30);
  });

  test('is endless where readings have no meaning', () => {
    const unread = { ...plan, celsius: [NaN, NaN, NaN] };
    expect(nearestToPlan(unread, plan).deltaC).toBe(Infinity);
  });

  test('is taken on a thinned record', () => {
    const atSeconds = Float64Array.from({ length: 5000 }, (_, i) => i);
    expect(thinned({ atSeconds, celsius: atSeconds }).atSeconds).toHaveLength(200);
  });
});
