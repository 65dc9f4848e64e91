import { describe, expect, it } from 'vitest';
import { scheduleFromCone, topForCone } from '../../../core/schedule/from-cone.ts';
import { intendedLegs } from '../../../core/schedule/intended-curve.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';

const aim = { cone: '6' as const, lastRampCPerHour: celsiusPerHour(60), holdMinutes: 0 };

describe('the top temperature for a cone', () => {
  // Source: the cone maker's published end-point chart, self-supporting cones (2016).
  it.each([
    ['6', 60, 1222],
    ['6', 150, 1243],
    ['04', 60, 1063],
    ['04', 150, 1077],
  ] as const)(
    'cone %s at %s °C/h without a hold is the chart’s, within 4 °C',
    (cone, rate, chartC) => {
      const top = topForCone({ cone, lastRampCPerHour: celsiusPerHour(rate), holdMinutes: 0 });
      expect(Math.abs(top - chartC)).toBeLessThan(4);
    },
  );

  it('falls as the hold grows, by less for each further minute', () => {
    const tops = [0, 10, 20, 60].map((holdMinutes) => topForCone({ ...aim, holdMinutes }));
    expect(tops[0]! - tops[1]!).toBeGreaterThan(1);
    expect(tops[0]! - tops[1]!).toBeGreaterThan(tops[1]! - tops[2]!);
    expect(tops[3]).toBeGreaterThan(1150);
  });
});

describe('a schedule made from a cone', () => {
  it('ends in the last ramp and the hold asked for, and never cools on the way', () => {
    const schedule = scheduleFromCone({ ...aim, holdMinutes: 10 });
    expect(schedule.cone).toBe('6');
    expect(schedule.segments.at(-1)).toMatchObject({ rateCPerHour: 60, holdMinutes: 10 });
    const legs = intendedLegs(schedule, { atSeconds: seconds(0), celsius: celsius(20) });
    expect(legs.every((leg) => leg.kind !== 'cooling')).toBe(true);
  });

  it('leaves out of the lead-in what a cool cone has no room for', () => {
    const schedule = scheduleFromCone({ ...aim, cone: '022' });
    expect(schedule.segments.map((segment) => segment.targetC)).toEqual(
      [...schedule.segments.map((segment) => segment.targetC)].sort((a, b) => a - b),
    );
    expect(schedule.segments.length).toBeLessThan(4);
  });
});
