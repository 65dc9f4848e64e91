import { describe, expect, it } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius } from '../../../core/units.ts';
import { freeName, namedApart } from '../../../renderer/told/schedule-name.ts';

const schedule = (name: string, targetC = 1000): Schedule => ({
  ...{ name, cone: null },
  segments: [{ rateCPerHour: 'full', minutes: null, targetC: celsius(targetC), holdMinutes: 0 }],
});

describe('a free name', () => {
  it('is the one wanted, else with the lowest number that is free', () => {
    expect(freeName('Mine', [])).toBe('Mine');
    expect(freeName('Mine', ['Mine'])).toBe('Mine 2');
    expect(freeName('Mine', ['Mine 3', 'Mine', 'Mine 2', 'Mine 5'])).toBe('Mine 4');
  });
});

describe('a schedule named apart', () => {
  it('keeps its name where no other has it', () => {
    expect(namedApart(schedule('A'), [schedule('B')])).toEqual(schedule('A'));
  });

  it('is numbered beside a different one of its name', () => {
    expect(namedApart(schedule('A'), [schedule('A', 900)])).toEqual(schedule('A 2'));
  });

  it('stays what it is beside itself', () => {
    expect(namedApart(schedule('A'), [schedule('A')])).toEqual(schedule('A'));
  });
});
