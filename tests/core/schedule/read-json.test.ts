import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import { readJsonSchedule } from '../../../core/schedule/read-json.ts';

const read = (text: string) => readJsonSchedule(text, 'test');
const refusalOf = (text: string): Refusal => {
  try {
    read(text);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error('was read');
};

const GLAZE = `{
  "name": "Glaze, slow",
  "cone": "05.5",
  "unit": "F",
  "segments": [
    { "ratePerHour": 180, "target": 212, "holdMinutes": 30 },
    { "ratePerHour": "full", "target": 1832 },
    { "minutes": 90, "target": 2012 }
  ]
}`;

describe('a schedule in JSON', () => {
  it('is read into °C, whatever its unit', () => {
    const schedule = read(GLAZE);
    expect(schedule).toMatchObject({ name: 'Glaze, slow', cone: '05.5' });
    expect(schedule.segments.map((segment) => segment.targetC)).toEqual([100, 1000, 1100]);
    expect(schedule.segments.map((segment) => segment.rateCPerHour)).toEqual([100, 'full', null]);
    expect(schedule.segments.map((segment) => segment.minutes)).toEqual([null, null, 90]);
    expect(schedule.segments.map((segment) => segment.holdMinutes)).toEqual([30, 0, 0]);
  });

  it.each([
    ['a broken line', GLAZE.replace('"F",', '"F"'), 'bad-schedule', 5],
    ['an unknown unit', GLAZE.replace('"F"', '"K"'), 'bad-schedule', 4],
    ['a cone that is not made', GLAZE.replace('05.5', '023'), 'unknown-cone', 3],
    ['a cone without quotes', GLAZE.replace('"05.5"', '6'), 'bad-schedule', 3],
    ['a negative rate', GLAZE.replace('180', '-180'), 'bad-schedule', 6],
    ['a rate of nothing', GLAZE.replace('180', '0'), 'bad-schedule', 6],
    ['a target that is no number', GLAZE.replace('1832', '"hot"'), 'bad-schedule', 7],
    [
      'both a rate and a time',
      GLAZE.replace('"minutes": 90', '"minutes": 90, "ratePerHour": 9'),
      'bad-schedule',
      8,
    ],
    ['neither', GLAZE.replace('"minutes": 90, ', ''), 'bad-schedule', 8],
    ['a word of its own', GLAZE.replace('"minutes"', '"mins"'), 'bad-schedule', 8],
    ['no segment', '{"segments":[]}', 'bad-schedule', 1],
    ['a list', '[1, 2]', 'bad-schedule', null],
  ])('is refused for %s, with its line', (_, text, code, line) => {
    expect(refusalOf(text)).toMatchObject({ code, line });
  });

  it('says where the unit may be missing', () => {
    expect(refusalOf(GLAZE.replace('"unit": "F",', '')).message).toContain('say so with unit F');
  });

  it('is not led astray by brackets inside its name', () => {
    const text = GLAZE.replace('Glaze, slow', 'a {b} "segments": [').replace(
      '"segments": [",',
      '\\"segments\\": [",',
    );
    expect(read(text).segments).toHaveLength(3);
  });
});
