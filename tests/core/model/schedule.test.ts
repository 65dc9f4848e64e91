import { describe, expect, it } from 'vitest';
import { zSchedule, zSegment } from '../../../core/model/schedule.ts';

const climb = { rateCPerHour: 100, minutes: null, targetC: 600, holdMinutes: 0 };
const accepts = (change: object): boolean => zSegment.safeParse({ ...climb, ...change }).success;

describe('a segment', () => {
  it('goes to its target at a rate, at full power or in a time', () => {
    expect(accepts({})).toBe(true);
    expect(accepts({ rateCPerHour: 'full' })).toBe(true);
    expect(accepts({ rateCPerHour: null, minutes: 90 })).toBe(true);
  });

  it('says how it gets there, and only once', () => {
    expect(accepts({ rateCPerHour: null })).toBe(false);
    expect(accepts({ minutes: 90 })).toBe(false);
    expect(accepts({ rateCPerHour: 'fast' })).toBe(false);
  });

  it('takes some time, and holds for some or none', () => {
    expect(accepts({ rateCPerHour: null, minutes: 0 })).toBe(false);
    expect(accepts({ holdMinutes: 15 })).toBe(true);
    expect(accepts({ holdMinutes: -1 })).toBe(false);
  });
});

describe('a schedule', () => {
  const schedule = { name: 'Bisque', cone: '04', segments: [climb] };

  it('has at least one segment', () => {
    expect(zSchedule.safeParse(schedule).success).toBe(true);
    expect(zSchedule.safeParse({ ...schedule, segments: [] }).success).toBe(false);
  });

  it('may leave its cone open, but not invent one', () => {
    expect(zSchedule.safeParse({ ...schedule, cone: null }).success).toBe(true);
    expect(zSchedule.safeParse({ ...schedule, cone: '4½' }).success).toBe(false);
  });
});
