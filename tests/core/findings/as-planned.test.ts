import { expect, test } from 'vitest';
import { asPlanned } from '../../../core/findings/as-planned.ts';
import { celsius } from '../../../core/units.ts';
import { SCHEDULE } from '../../builders/facts.ts';

const off = (offCones: number, cone: '6' | '9' = '6') => ({ cone, offCones, certain: true });

test('a schedule for its cone is told of where the firing missed', () => {
  // 60 °C/h to 1215 °C and a quarter hour there: about cone 6, whose end point is 1222 °C
  // (published chart for self-supporting cones), give or take the half cone.
  for (const missed of [-1.4, 1.4]) {
    const { asPlannedOffCones } = asPlanned(SCHEDULE, undefined, off(missed));
    expect(Math.abs(asPlannedOffCones!)).toBeLessThan(0.5);
  }
});

test('nothing is told of a schedule that would miss by itself', () => {
  expect(asPlanned(SCHEDULE, undefined, off(-1.4, '9'))).toEqual({});
  const cool = SCHEDULE.segments.map((segment) => ({ ...segment, targetC: celsius(300) }));
  expect(asPlanned({ ...SCHEDULE, segments: cool }, undefined, off(-1.4))).toEqual({});
});

test('nothing is told where the firing came to what the schedule comes to, or without one', () => {
  const { asPlannedOffCones } = asPlanned(SCHEDULE, undefined, off(-1.4));
  expect(asPlanned(SCHEDULE, undefined, off(asPlannedOffCones! + 0.4))).toEqual({});
  expect(asPlanned(null, undefined, off(-1.4))).toEqual({});
});
