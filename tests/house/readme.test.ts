import { describe, expect, test } from 'vitest';
import { readDecisions } from '../../core/log/rules.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { textOf } from './repository.ts';

const readme = textOf('README.md');

/** The first block of a language below some words of the README. */
const block = (language: string, below: string): string => {
  const rest = readme.split(below)[1] ?? '';
  const text = new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(rest)?.[1];
  if (text === undefined) throw new Error(`README shows no ${language} below “${below}”`);
  return text;
};

const SCHEDULES = '### What a schedule may be';

describe('the README', () => {
  test('shows a JSON schedule that is read as it says', () => {
    const { cone, segments } = readSchedule(block('json', SCHEDULES), 'schedule.json');
    expect(cone).toBe('6');
    expect(segments.map(({ targetC }) => targetC)).toEqual([120, 1000, 1100, 1215]);
    expect(segments.map(({ holdMinutes }) => holdMinutes)).toEqual([30, 0, 0, 10]);
    expect(segments.map(({ minutes }) => minutes)).toEqual([null, null, 90, null]);
  });

  test('shows a CSV schedule in °F that is read as it says', () => {
    const { cone, segments } = readSchedule(block('csv', SCHEDULES), 'schedule.csv');
    expect(cone).toBe('05');
    // 250, 1700 and 1880 °F by the definition of the scale.
    const expected = [121.111, 926.667, 1026.667];
    segments.forEach(({ targetC }, index) => expect(targetC).toBeCloseTo(expected[index]!, 2));
    expect(segments.map(({ holdMinutes }) => holdMinutes)).toEqual([60, 0, 10]);
  });

  test('shows a reading file that is read as it says', () => {
    const reading = readDecisions(block('json', 'The file of `--reading`'));
    expect(reading).toMatchObject({ delimiter: ';', unit: 'mV', coupleType: 'S' });
  });

  test('names no script that is not there', () => {
    const scripts = Object.keys(
      (JSON.parse(textOf('package.json')) as { scripts: object }).scripts,
    );
    const named = [...`${readme}${textOf('DEVELOPERS.md')}`.matchAll(/npm run ([\w:]+)/g)];
    const unknown = named
      .map(([, script]) => script!)
      .filter((script) => !scripts.includes(script));
    expect(named.length).toBeGreaterThan(0);
    expect(unknown).toEqual([]);
  });
});
