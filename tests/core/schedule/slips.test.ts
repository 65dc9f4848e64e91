import { expect, test } from 'vitest';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import {
  holdSlips,
  rateSlips,
  slipsOf,
  targetSlips,
  unitSlip,
  unitTyped,
} from '../../../core/schedule/slips.ts';

const typed = (rows: string, unit: 'C' | 'F' = 'C') =>
  readSchedule(`# unit: ${unit}\nrate_per_hour,target,hold_minutes\n${rows}\n`, 'x.csv');

test('the unit in which a schedule was typed is the one of round numbers', () => {
  expect(unitTyped(typed('200,2185,0', 'F'))).toBe('F');
  expect(unitTyped(typed('100,1215,0', 'C'))).toBe('C');
});

test('a target may have lost its last digit, or gained one', () => {
  const meant = targetSlips(typed('60,121,0'), 0).map((slip) => Math.round(slip.meant));
  expect(meant).toEqual([1210, 1211, 1212, 1213, 1214, 1215, 1216, 1217, 1218, 1219, 12]);
});

test('digits are lost in the unit that was typed', () => {
  // 200 °F for 2000 °F, which is 1093 °C.
  expect(targetSlips(typed('300,200,0', 'F'), 0)[0]!.meant).toBeCloseTo(1093.33, 2);
});

test.each([
  [6, [60]],
  [60, []],
  [1500, [150]],
])('a rate of %d °C/h: %o', (rate, meant) => {
  expect(rateSlips(typed(`${rate},1000,0`), 0).map((slip) => slip.meant)).toEqual(meant);
});

test.each([
  [900, [15]],
  [60, []],
  [2, [120]],
  [15, []],
  [20_000, []],
])('a hold of %d min: %o', (hold, meant) => {
  expect(holdSlips(typed(`60,1215,${hold}`), 0).map((slip) => slip.meant)).toEqual(meant);
});

test('numbers typed as °F that were °C, and the other way round', () => {
  expect(unitSlip(typed('60,1215,15', 'F'))!.meant).toBeCloseTo(1215, 6);
  expect(unitSlip(typed('120,1320,10', 'C'))!.meant).toBeCloseTo(715.6, 1);
  expect(unitSlip(typed('60,1400,0', 'F'))!.mended.segments[0]!.rateCPerHour).toBeCloseTo(60, 6);
});

test('a mended schedule differs in the one entry', () => {
  for (const { mended, segment, kind } of slipsOf(typed('100,120,30\n6,1215,900'))) {
    if (kind === 'unit') continue;
    const kept = mended.segments.filter((_, i) => i !== segment);
    const own = typed('100,120,30\n6,1215,900').segments.filter((_, i) => i !== segment);
    expect(kept).toEqual(own);
  }
});
