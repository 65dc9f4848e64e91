import { describe, expect, it } from 'vitest';
import { celsius, celsiusPerHour } from '../../../core/units.ts';
import { typedEntry } from '../../../renderer/told/entry.ts';
import {
  blankLeg,
  legOfSegment,
  segmentOfLeg,
  type LegDraft,
} from '../../../renderer/told/leg-draft.ts';

const leg = (change: Partial<LegDraft>): LegDraft => ({
  ...blankLeg(0, 'C'),
  rate: typedEntry('100', 'C'),
  target: typedEntry('1000', 'C'),
  ...change,
});

const faults = (change: Partial<LegDraft>) => {
  const read = segmentOfLeg(leg(change));
  return 'faults' in read ? read.faults : null;
};

describe('segmentOfLeg', () => {
  it('makes a segment of a rate, of full power and of a time', () => {
    const end = { targetC: 1000, holdMinutes: 0 };
    expect(segmentOfLeg(leg({}))).toEqual({
      segment: { rateCPerHour: 100, minutes: null, ...end },
    });
    expect(segmentOfLeg(leg({ way: 'full' }))).toEqual({
      segment: { rateCPerHour: 'full', minutes: null, ...end },
    });
    expect(segmentOfLeg(leg({ way: 'minutes', minutes: '90', hold: '15' }))).toEqual({
      segment: { rateCPerHour: null, minutes: 90, targetC: 1000, holdMinutes: 15 },
    });
  });

  it('tells what is only missing from what is wrong', () => {
    expect(faults({ rate: typedEntry('', 'C') })).toEqual({ wrong: {}, missing: ['rate'] });
    expect(faults({ way: 'minutes' })).toEqual({ wrong: {}, missing: ['minutes'] });
    expect(segmentOfLeg(blankLeg(0, 'F'))).toEqual({
      faults: { wrong: {}, missing: ['rate', 'target'] },
    });
  });

  it('lays each fault at its own field, and no other', () => {
    const all = faults({
      rate: typedEntry('-5', 'C'),
      target: typedEntry('2200', 'C'),
      hold: 'abc',
    });
    expect(all?.wrong).toEqual({
      rate: 'A rate is above zero and at most 3000 °C/h, also where it cools; for more there is full power.',
      target: 'A target lies above 0 °C and at most at 1500 °C.',
      hold: '“abc” is not a number.',
    });
    expect(faults({ hold: '99999' })?.wrong).toEqual({ hold: 'A hold lasts at most 20160 min.' });
    expect(faults({ way: 'minutes', minutes: '0' })?.wrong).toEqual({
      minutes: 'A time is above zero and at most 20160 min.',
    });
  });

  it('judges in the unit that was typed: 2200 is a target in °F and none in °C', () => {
    expect(faults({ target: typedEntry('2200', 'F') })).toBeNull();
    expect(faults({ target: typedEntry('2800', 'F') })?.wrong.target).toBe(
      'A target lies above 32 °F and at most at 2732 °F.',
    );
  });

  it('does not look at the fields of another way', () => {
    expect(faults({ way: 'full', rate: typedEntry('abc', 'C'), minutes: 'x' })).toBeNull();
  });
});

describe('legOfSegment', () => {
  it.each([
    { rateCPerHour: celsiusPerHour(138.88888), minutes: null },
    { rateCPerHour: 'full' as const, minutes: null },
    { rateCPerHour: null, minutes: 22.5 },
  ])('gives back the very segment it was made of', (way) => {
    const segment = { ...way, targetC: celsius(926.6666666666666), holdMinutes: 12.5 };
    expect(segmentOfLeg(legOfSegment(segment, 7))).toEqual({ segment });
  });
});
