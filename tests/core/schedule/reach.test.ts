import { expect, test } from 'vitest';
import { reachOf } from '../../../core/schedule/reach.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';

const reach = (...rows: readonly string[]) =>
  reachOf(readSchedule(`rate_per_hour,target,hold_minutes\n${rows.join('\n')}\n`, 'x.csv'));

// Cone maker's chart (2016), self-supporting: cone 6 ends at 1222 °C at 60 °C/h, cone 06 at 998.
test.each([
  [1222, 6],
  [998, -5],
])('a last ramp of 60 °C/h to %d °C reaches cone position %d', (target, position) => {
  expect(Math.abs(reach(`60,${target},0`).position! - position)).toBeLessThan(0.15);
});

test('its length is the sum of its entries', () => {
  expect(reach('100,120,30', '150,1020,0', '60,1215,15').minutes).toBeCloseTo(660, 6);
});

test('a schedule that bends no cone has no position', () => {
  expect(reach('30,90,720')).toMatchObject({ peakC: 90, position: null });
});
