import { describe, expect, it } from 'vitest';
import { clockCost, plannedClock, SETPOINT_TRUST } from '../../../core/align/clock.ts';
import { intendedLegs } from '../../../core/schedule/intended-curve.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { celsius, seconds } from '../../../core/units.ts';

const legsOf = (csv: string) =>
  intendedLegs(readSchedule(csv, 'x.csv'), { atSeconds: seconds(0), celsius: celsius(20) });

describe('the schedule’s clock', () => {
  it('ends each leg when the schedule does', () => {
    const clock = plannedClock(legsOf('rate_per_hour,target,hold_minutes\n100,520,30\n50,620,0\n'));
    expect(clock.map((end) => end!.endSeconds)).toEqual([18_000, 19_800, 27_000]);
  });

  it('says nothing from a leg at full power on', () => {
    const clock = plannedClock(legsOf('rate_per_hour,target\n100,520\nfull,900\n60,1000\n'));
    expect(clock.map((end) => end === null)).toEqual([false, true, true]);
  });
});

describe('going on by the clock', () => {
  it('costs least on the minute, a setpoint being believed at once', () => {
    const planned = plannedClock(legsOf('rate_per_hour,target\n100,520\n'))[0]!;
    expect(clockCost(planned, planned.endSeconds)).toBeGreaterThan(0);
    expect(clockCost({ ...planned, ...SETPOINT_TRUST }, planned.endSeconds)).toBe(0);
    expect(clockCost(planned, planned.endSeconds + 600)).toBeGreaterThan(
      clockCost(planned, planned.endSeconds),
    );
    expect(clockCost(planned, planned.endSeconds + 86_400)).toBeLessThan(100);
  });

  it('is out of the question without a clock', () => {
    expect(clockCost(null, 0)).toBe(Infinity);
  });
});
