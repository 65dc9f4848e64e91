import { describe, expect, it } from 'vitest';
import { verdictOf } from '../../../core/align/verdicts.ts';
import type { IntendedLeg } from '../../../core/schedule/intended-curve.ts';
import type { Course } from '../../../core/trace/course.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';

const HOUR = 3600;
const ramp: IntendedLeg = {
  segment: 0,
  kind: 'ramp',
  startSeconds: seconds(0),
  endSeconds: seconds(2 * HOUR),
  startC: celsius(900),
  endC: celsius(1100),
  rateCPerHour: celsiusPerHour(100),
};
const hold: IntendedLeg = {
  ...ramp,
  kind: 'hold',
  startC: celsius(1100),
  rateCPerHour: celsiusPerHour(0),
};
const course = (hours: number, endC: number): Course => ({
  startSeconds: seconds(HOUR),
  endSeconds: seconds(HOUR + hours * HOUR),
  startC: celsius(900),
  endC: celsius(endC),
  rateCPerHour: celsiusPerHour((endC - 900) / hours),
});

const seen = { comesFrom: 'below', seenShare: 1, offLevelC: 0 } as const;

describe('verdicts on a leg', () => {
  it.each([
    [ramp, course(2, 1100), 'as-planned'],
    [ramp, course(2.1, 1098), 'as-planned'],
    [ramp, course(2.4, 1100), 'slow'],
    [ramp, course(1.6, 1100), 'fast'],
    [ramp, course(2, 1080), 'not-reached'],
    [ramp, null, 'missing'],
    [hold, course(2, 1100), 'as-planned'],
    [hold, course(1.5, 1100), 'short'],
    [hold, course(3, 1100), 'long'],
    [hold, { ...course(2, 1080), startC: celsius(1060) }, 'not-reached'],
    [hold, { ...course(2, 1108), startC: celsius(1092) }, 'as-planned'],
    [{ ...ramp, rateCPerHour: null }, course(9, 1100), 'as-planned'],
    [{ ...ramp, kind: 'cooling', endC: celsius(700) }, course(2, 740), 'not-reached'],
  ] as const)('%#: %o', (planned, actual, verdict) => {
    expect(verdictOf(planned, actual, 0.5, seen)).toBe(verdict);
  });

  it('do not call a hold on the hot side not reached, unless it was come to from above', () => {
    const hot = { ...course(2, 1120), startC: celsius(1115) };
    expect(verdictOf(hold, hot, 0.5, seen)).toBe('as-planned');
    expect(verdictOf(hold, hot, 0.5, { ...seen, comesFrom: 'above' })).toBe('not-reached');
  });

  it.each([
    [20, 0.5, 'off-level'],
    [-20, 0.5, 'off-level'],
    [8.1, 0.5, 'off-level'],
    [8, 0.5, 'as-planned'],
    [8.1, 3, 'as-planned'],
  ] as const)('call a hold %d °C off its level, at a noise of %d °C, %s', (off, noiseC, said) => {
    const context = { ...seen, offLevelC: off };
    const kept = { ...course(2, 1100 + off), startC: celsius(1100) };
    expect(verdictOf(hold, kept, noiseC, context)).toBe(said);
  });

  it('judge the rest of a leg whose beginning was not recorded', () => {
    const rest = { ...course(1, 1100), startC: celsius(1000) };
    expect(verdictOf(ramp, rest, 0.5, seen)).toBe('fast');
    expect(verdictOf(ramp, rest, 0.5, { ...seen, seenShare: 0.5 })).toBe('as-planned');
  });

  it('allow a noisy couple more', () => {
    expect(verdictOf(ramp, course(2, 1090), 4, seen)).toBe('as-planned');
  });
});
