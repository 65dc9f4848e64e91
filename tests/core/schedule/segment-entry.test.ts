import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import {
  scheduleCone,
  segmentFrom,
  type SegmentEntry,
} from '../../../core/schedule/segment-entry.ts';

const entry: SegmentEntry = {
  ratePerHour: 180,
  minutes: null,
  target: 1832,
  holdMinutes: 5,
  line: 9,
};

describe('a segment', () => {
  it('converts its rate without and its target with the 32', () => {
    expect(segmentFrom(entry, 'F')).toEqual({
      rateCPerHour: 100,
      minutes: null,
      targetC: 1000,
      holdMinutes: 5,
    });
    expect(segmentFrom({ ...entry, target: 900 }, 'C')).toMatchObject({
      rateCPerHour: 180,
      targetC: 900,
    });
  });

  it.each([
    [{ ratePerHour: null }, 'needs a rate'],
    [{ minutes: 10 }, 'not both'],
    [{ ratePerHour: -5 }, 'not above zero'],
    [{ ratePerHour: NaN }, 'not above zero'],
    [{ ratePerHour: 1e5 }, 'faster than any kiln'],
    [{ target: 1e5 }, 'hotter than any kiln'],
    [{ target: 30 }, 'below freezing'],
    [{ holdMinutes: -1 }, 'not possible'],
    [{ holdMinutes: Infinity }, 'not possible'],
    [{ ratePerHour: null, minutes: 0 }, 'cannot be the time'],
  ])('with %j is refused in words', (change, why) => {
    expect(() => segmentFrom({ ...entry, ...change }, 'F')).toThrow(why);
    expect(() => segmentFrom({ ...entry, ...change }, 'F')).toThrow(Refusal);
  });
});

describe("a schedule's cone", () => {
  it('is read as people write it', () => {
    expect(scheduleCone('cone 06', 1)).toBe('06');
    expect(scheduleCone('5 1/2', 1)).toBe('5.5');
  });

  it('is refused where no such cone is made', () => {
    expect(() => scheduleCone('15', 3)).toThrow('there is no cone "15"');
  });
});
