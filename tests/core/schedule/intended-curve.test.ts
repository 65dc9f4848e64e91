import { describe, expect, it } from 'vitest';
import type { Cone } from '../../../core/model/cone.ts';
import { scheduleFromCone, topForCone } from '../../../core/schedule/from-cone.ts';
import {
  intendedCorners,
  intendedLegs,
  isFreeClimb,
} from '../../../core/schedule/intended-curve.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { celsius, celsiusPerHour, fromFahrenheit, seconds, toHours } from '../../../core/units.ts';

const durationHours = (csv: string, fromC: ReturnType<typeof celsius>): number => {
  const legs = intendedLegs(readSchedule(csv, 'check.csv'), {
    atSeconds: seconds(0),
    celsius: fromC,
  });
  return toHours(legs.at(-1)!.endSeconds);
};

describe('how long a schedule takes', () => {
  // Source of the three: segments as published by suppliers of the trade (seen), totals computed
  // independently by hand: sum of |target change| / rate and of the holds.
  it('adds up a slow cone 04 bisque in °F from 70 °F', () => {
    const csv =
      '# unit: F\nrate_per_hour,target,hold_minutes\n200,250,30\n200,1100,0\n150,1700,0\n108,1945,15\n';
    expect(durationHours(csv, fromFahrenheit(70))).toBeCloseTo(12.17, 2);
  });

  it('adds up a medium cone 04 bisque in °F from 70 °F', () => {
    const csv =
      '# unit: F\nrate_per_hour,target,hold_minutes\n250,250,\n300,1100,\n200,1700,\n108,1945,15\n';
    expect(durationHours(csv, fromFahrenheit(70))).toBeCloseTo(9.07, 2);
  });

  it('adds up a cone 6 glaze with slow cooling in °C from 25 °C', () => {
    const csv =
      'rate_per_hour,target,hold_minutes\n55,105,60\n200,1080,0\n85,1200,15\n275,1000,0\n70,760,0\n';
    expect(durationHours(csv, celsius(25))).toBeCloseTo(13.147, 3);
  });
});

describe('how long a firing takes, by common practice (no source)', () => {
  const toEndPoint = (head: string, cone: Cone): string => {
    const top = Math.round(
      topForCone({ cone, lastRampCPerHour: celsiusPerHour(60), holdMinutes: 10 }),
    );
    return head.replaceAll('NEAR', String(top - 100)).replaceAll('TOP', String(top));
  };
  // Both made up here: rates that a potter would call slow, and medium.
  const SLOW = 'rate_per_hour,target,hold_minutes\n60,120,60\n110,600,\n150,NEAR,\n60,TOP,10\n';
  const MEDIUM = 'rate_per_hour,target,hold_minutes\n120,120,15\n180,600,\n220,NEAR,\n60,TOP,10\n';

  it.each(['04', '5'] as const)('to cone %s, a slow one about 12 h, a medium one 7½', (cone) => {
    const slow = durationHours(toEndPoint(SLOW, cone), celsius(20));
    const medium = durationHours(toEndPoint(MEDIUM, cone), celsius(20));
    expect(Math.abs(slow - 12)).toBeLessThan(1);
    expect(Math.abs(medium - 7.5)).toBeLessThan(0.5);
  });

  it.each(['04', '5'] as const)('made from cone %s, moderate: between the two', (cone) => {
    const aim = { cone, lastRampCPerHour: celsiusPerHour(60), holdMinutes: 10 };
    const start = { atSeconds: seconds(0), celsius: celsius(20) };
    const hours = toHours(intendedLegs(scheduleFromCone(aim), start).at(-1)!.endSeconds);
    expect(hours).toBeGreaterThan(7.5);
    expect(hours).toBeLessThan(12);
  });

  // Common practice wants it for pieces over 12 in or walls over 1/4 in. Nothing in core reckons with
  // the ware's thickness yet, so that half is not held here.
  it('a climb of 60 °F/h from 72 to 180 °F and two hours there take 3.8 h, below boiling', () => {
    const drying = readSchedule('# unit: F\nrate_per_hour,target,hold_minutes\n60,180,120\n', 'd');
    const start = { atSeconds: seconds(0), celsius: fromFahrenheit(72) };
    const legs = intendedLegs(drying, start);
    expect(toHours(legs.at(-1)!.endSeconds)).toBeCloseTo(3.8, 2);
    expect(Math.max(...legs.map(({ endC }) => endC))).toBeLessThan(100);
  });
});

describe('intended legs', () => {
  const start = { atSeconds: seconds(600), celsius: celsius(20) };

  it('names climbs, holds and controlled falls, and leaves out what is nothing', () => {
    const schedule = readSchedule(
      'rate_per_hour,target,hold_minutes\n100,520,0\n100,520,30\n50,420,0\n',
      'x.csv',
    );
    const legs = intendedLegs(schedule, start);
    expect(legs.map((leg) => [leg.segment, leg.kind])).toEqual([
      [0, 'ramp'],
      [1, 'hold'],
      [2, 'cooling'],
    ]);
    expect(legs.map((leg) => leg.endSeconds - leg.startSeconds)).toEqual([18_000, 1800, 7200]);
    expect(legs[2]!.rateCPerHour).toBe(-50);
  });

  it('lets the firing say how long full power lasted, and takes timed climbs at their word', () => {
    const schedule = readSchedule('rate_per_hour,minutes,target\nfull,,500\n,90,800\n', 'x.csv');
    const legs = intendedLegs(schedule, start, () => seconds(5000));
    expect(legs[0]).toMatchObject({ rateCPerHour: null, endSeconds: 5600 });
    expect(legs[1]).toMatchObject({ rateCPerHour: 200, endSeconds: 11_000 });
    expect(intendedCorners(legs, start).map((corner) => corner.celsius)).toEqual([20, 500, 800]);
  });
});

describe('a free climb', () => {
  it('is one at full power, not a set rate, a hold, a fall or nothing', () => {
    const legs = [
      { kind: 'ramp', rateCPerHour: null },
      { kind: 'ramp', rateCPerHour: celsiusPerHour(60) },
      { kind: 'cooling', rateCPerHour: null },
      undefined,
    ] as const;
    expect(legs.map(isFreeClimb)).toEqual([true, false, false, false]);
  });
});
