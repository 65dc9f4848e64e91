import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';

const refusalOf = (text: string): Refusal => {
  try {
    readSchedule(text, 'glaze.schedule.csv');
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('was read');
};

describe('reading a schedule', () => {
  it('names it after its file where it does not name itself', () => {
    expect(
      readSchedule('rate_per_hour,target\n100,500\n', 'shelf/slow glaze.schedule.csv').name,
    ).toBe('slow glaze');
  });

  it.each([
    '# name:  \nrate_per_hour,target\n100,500\n',
    '{"name": " ", "segments": [{"ratePerHour": 100, "target": 500}]}',
  ])('takes a blank name for none', (text) => {
    expect(readSchedule(text, 'slow glaze.schedule.csv').name).toBe('slow glaze');
  });

  it('tells the two forms apart whatever the ending, with or without a byte order mark', () => {
    const json = '\uFEFF {"segments":[{"ratePerHour":100,"target":500}]}';
    const csv = '\uFEFFrate_per_hour,target\n100,500\n';
    expect(readSchedule(json, 'a.txt').segments).toEqual(readSchedule(csv, 'a.txt').segments);
  });

  it.each([
    ['', 'empty'],
    [' \n\n', 'empty'],
    ['PK\0\0', 'not a text file'],
  ])('refuses %j', (text, why) => {
    expect(refusalOf(text)).toMatchObject({ code: 'bad-schedule' });
    expect(refusalOf(text).message).toContain(why);
  });

  it.each(['null', ' 42\n', '-1.5e3', 'true', '"slow glaze"', '[]', '[1, 2]'])(
    'says of %j that a schedule is an object',
    (text) => {
      const { code, message } = refusalOf(text);
      expect([code, message]).toEqual(['bad-schedule', 'a schedule is an object with "segments"']);
    },
  );

  it('never fails but with a refusal, in words', () => {
    const scraps = fc.stringMatching(/^[a-z0-9_,;:#"{}[\].\-\n ]{0,80}$/);
    fc.assert(
      fc.property(scraps, (text) => {
        try {
          readSchedule(text, 'x');
        } catch (error) {
          expect(error).toBeInstanceOf(Refusal);
          expect((error as Refusal).message).not.toMatch(/undefined|NaN|\[object|at position/);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
