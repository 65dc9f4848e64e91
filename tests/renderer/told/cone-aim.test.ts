import { describe, expect, it } from 'vitest';
import { CONES, CONE_TYPES } from '../../../core/model/cone.ts';
import { newAim, scheduleOfAim } from '../../../renderer/told/cone-aim.ts';
import { typedEntry } from '../../../renderer/told/entry.ts';

const top = (made: ReturnType<typeof scheduleOfAim>) =>
  'schedule' in made ? made.schedule.segments.at(-1)! : null;

describe('scheduleOfAim', () => {
  it('ends at the published end point where there is no hold', () => {
    // Self-supporting cone 6 at 60 °C/h: 1222 °C (the makers' chart, core/reference); 2 °C of fit.
    const last = top(scheduleOfAim(newAim('6'), undefined));
    expect(last?.rateCPerHour).toBe(60);
    expect(Math.abs(last!.targetC - 1222)).toBeLessThanOrEqual(2);
  });

  it('lowers the top for a hold, and takes the rate in the unit it was typed in', () => {
    const aim = { ...newAim('6'), rate: typedEntry('108', 'F'), hold: '30' };
    const last = top(scheduleOfAim(aim, undefined));
    expect(last?.rateCPerHour).toBeCloseTo(60, 9);
    expect(last?.holdMinutes).toBe(30);
    expect(last!.targetC).toBeLessThan(top(scheduleOfAim(newAim('6'), undefined))!.targetC);
  });

  it('says what is amiss with a rate or a hold', () => {
    expect(scheduleOfAim({ ...newAim('6'), rate: typedEntry('0', 'C') }, undefined)).toMatchObject({
      faults: { wrong: { rate: expect.stringContaining('above zero') as string } },
    });
    expect(scheduleOfAim({ ...newAim('6'), hold: 'long' }, undefined)).toMatchObject({
      faults: { wrong: { hold: '“long” is not a number.' } },
    });
    expect(scheduleOfAim({ ...newAim('6'), rate: typedEntry('', 'C') }, undefined)).toEqual({
      faults: { wrong: {}, missing: ['rate'] },
    });
  });

  it('makes a schedule for every cone of every kind, at any rate and hold that may be typed', () => {
    for (const coneType of CONE_TYPES) {
      for (const cone of CONES) {
        for (const rate of ['0.5', '60', '3000']) {
          for (const hold of ['', '20160']) {
            const made = scheduleOfAim({ cone, rate: typedEntry(rate, 'C'), hold }, coneType);
            const last = top(made);
            expect(last?.targetC).toBeGreaterThan(400);
            expect(last?.targetC).toBeLessThan(1500);
          }
        }
      }
    }
  });

  it('begins with the cone that was meant, else with cone 6', () => {
    expect([newAim('04').cone, newAim(null).cone]).toEqual(['04', '6']);
  });
});
