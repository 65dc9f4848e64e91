import { describe, expect, test } from 'vitest';
import {
  certainlyMissed,
  heatWorkEvidence,
  isNearNamesake,
  offTarget,
} from '../../../core/findings/off-target.ts';
import { seconds } from '../../../core/units.ts';
import { heatWorkAt } from '../../builders/facts.ts';

describe('how far the heat-work is off', () => {
  test('is counted in cones on the trade’s scale, zero names included', () => {
    expect(offTarget(heatWorkAt(5.2, '6'))?.offCones).toBeCloseTo(-0.8, 9);
    // 01 stands at 0 and 1 at 1: from cone 1 to 02 are two cones.
    expect(offTarget(heatWorkAt(1, '02'))?.offCones).toBeCloseTo(2, 9);
    expect(offTarget(heatWorkAt(-4.5, '05.5'))?.offCones).toBeCloseTo(0, 9);
  });

  test('is unknown without a target or a position', () => {
    expect(offTarget(heatWorkAt(5, null))).toBeNull();
    expect(offTarget(heatWorkAt(null, '6'))).toBeNull();
  });

  test.each([
    // position, range, certain: the near end of the range must pass the half cone as well
    [6.0, 0.1, false],
    [5.4, 0.05, true],
    [5.4, 0.1, false],
    [5.4, 0.2, false],
    [4.9, 0.5, true],
    [5.1, 0.5, false],
    [6.6, 0.05, true],
    [6.6, 0.2, false],
    [7.1, 0.5, true],
    [3.0, 8, false],
  ])('at %d ± %d against cone 6 is certain: %s', (position, rangeCones, certain) => {
    const heatWork = heatWorkAt(position, '6', { rangeCones });
    expect(offTarget(heatWork)?.certain).toBe(certain);
    expect(certainlyMissed(heatWork)).toBe(certain);
  });

  test('is never certain to be short by a lower bound, but may be beyond', () => {
    const bound = 'at-least';
    expect(certainlyMissed(heatWorkAt(3, '6', { bound }))).toBe(false);
    expect(certainlyMissed(heatWorkAt(9, '6', { bound }))).toBe(true);
  });

  test('is not certain where it is not known', () => {
    expect(certainlyMissed(null)).toBe(false);
    expect(certainlyMissed(heatWorkAt(3, null))).toBe(false);
  });
});

describe('where the heat-work was done', () => {
  const reached = (atMinutes: number, dose: number) => ({
    atSeconds: seconds(60 * atMinutes),
    dose,
  });

  test('is where nearly all of the dose came in, the long cooling left out', () => {
    const accumulated = [
      reached(0, 0),
      reached(100, 0.01),
      reached(110, 0.1),
      reached(200, 0.9),
      reached(210, 1.19),
      reached(900, 1.2),
    ];
    expect(heatWorkEvidence({ ...heatWorkAt(6), accumulated }, seconds(1))).toEqual([
      { fromSeconds: 6600, toSeconds: 12_600 },
    ]);
  });

  test('is the peak where nothing came in', () => {
    expect(heatWorkEvidence({ ...heatWorkAt(6), accumulated: [] }, seconds(7))).toEqual([
      { fromSeconds: 7, toSeconds: 7 },
    ]);
  });
});

test('a zero is lost or added only where the firing came out at the namesake', () => {
  const near = (position: number, cone: '6' | '06' | '017') =>
    isNearNamesake(offTarget(heatWorkAt(position, cone))!);
  // Cone 06 stands at −5 on the scale, cone 6 at 6; cone 17 is none.
  expect(near(-4.9, '6')).toBe(true);
  expect(near(6.9, '06')).toBe(true);
  expect(near(7.4, '6')).toBe(false);
  expect(near(4.6, '6')).toBe(false);
  expect(near(-15, '017')).toBe(false);
});
