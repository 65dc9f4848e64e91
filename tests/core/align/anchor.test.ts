import { describe, expect, it } from 'vitest';
import { anchoredHot, startOfPlan } from '../../../core/align/anchor.ts';
import { intendedLegs } from '../../../core/schedule/intended-curve.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { AS_PLANNED, traceOfStretches } from '../../builders/alignment.ts';

describe('where the plan is laid', () => {
  it('is the start of heating at the temperature the kiln had', () => {
    const start = startOfPlan(traceOfStretches([{ holdMinutes: 60 }, ...AS_PLANNED], 27));
    expect(Math.abs(start.atSeconds - 3600)).toBeLessThan(180);
    expect(start.celsius).toBeCloseTo(27, 0);
  });

  it('is a room’s temperature for a record that begins hot', () => {
    expect(startOfPlan(traceOfStretches(AS_PLANNED.slice(2), 600))).toEqual({
      atSeconds: 0,
      celsius: 20,
    });
  });
});

describe('a plan for a record that begins hot', () => {
  const start = { atSeconds: seconds(0), celsius: celsius(20) };
  const legs = intendedLegs(readSchedule('rate_per_hour,target\n100,520\n200,1020\n', 'x'), start);
  const course = {
    startSeconds: seconds(0),
    endSeconds: seconds(6000),
    startC: celsius(770),
    endC: celsius(1020),
    rateCPerHour: celsiusPerHour(150),
  };

  it('passes through the first recorded leg’s beginning', () => {
    // 770 °C lies half-way up the second leg: 5 h for the first and 1.25 h of the second.
    expect(anchoredHot(start, legs, [null, course]).atSeconds).toBe(-6.25 * 3600);
  });

  it('stays where it is if no leg was found', () => {
    expect(anchoredHot(start, legs, [null, null])).toBe(start);
  });
});
