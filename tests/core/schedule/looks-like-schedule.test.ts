import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { looksLikeSchedule } from '../../../core/schedule/looks-like-schedule.ts';

const ROOT = join(import.meta.dirname, '../../..');
const filesIn = (folder: string) =>
  readdirSync(join(ROOT, folder)).map((name) => ({
    name,
    text: readFileSync(join(ROOT, folder, name), 'latin1'),
  }));

describe('a text that was meant to be a schedule', () => {
  it.each([
    ['a target that is no number', '{"segments":[{"target":"hot"}]}'],
    ['broken JSON', '\uFEFF {\n "segments" : [{"target": 1000,}'],
    ['a word where a number should be', 'rate_per_hour,target\n100,hot\n'],
    ['a column it does not know', '# unit: F\n\n"Rate_per_hour";"target";"soak"\n100;1000;5'],
    ['no target', 'minutes\thold_minutes\n60\t5'],
    ['nothing below its columns', 'minutes,target\n'],
  ])('is known with %s', (_, text) => {
    expect(looksLikeSchedule(text)).toBe(true);
  });

  it.each([
    ['nothing', ''],
    ['a log with a setpoint', 'minutes,temperature,target\n0,20,20\n'],
    ['JSON of a log', '{"unit":"C","readings":[[0,20],[60,25]]}'],
    ['only remarks', '# cone: 6\n# unit: F\n'],
    ['a list', '[{"minutes":1,"target":20}]'],
  ])('is not seen in %s', (_, text) => {
    expect(looksLikeSchedule(text)).toBe(false);
  });

  it('is each schedule of the samples and no log of the samples or the fixtures', () => {
    const samples = filesIn('sample-traces').filter(({ name }) => name !== 'README.md');
    const logs = filesIn('tests/fixtures/logs').filter(({ name }) => !/README|truth/.test(name));
    expect([samples.length, logs.length].every((count) => count > 20)).toBe(true);
    const wrong = [...samples, ...logs].filter(
      ({ name, text }) => looksLikeSchedule(text) !== name.includes('.schedule.'),
    );
    expect(wrong.map(({ name }) => name)).toEqual([]);
  });
});
