import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyze } from '../../core/analyze.ts';
import { htmlReport } from '../../core/report/html-report.ts';
import { textReport } from '../../core/report/text-report.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { idsWithoutWords } from '../../core/wording/reading-ids.ts';
import { wording } from '../../core/wording/wording.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { stringsIn } from '../core/wording/builders.ts';
import { sample } from './terminal.ts';

const files = readdirSync(dirname(sample('README.md')));
const logs = files.filter((name) => !/\.schedule\.|README/.test(name));
const scheduleOf = (log: string): string =>
  files.find((name) => name.startsWith(`${log.replace(/\.\w+$/, '')}.schedule.`))!;

/** These say what is missing, or only how often: there is no measure in their titles. */
const WITHOUT_NUMBER = ['segment-missing', 'clock-jump'];

it('there are samples to be put into words', () => {
  expect(logs.length).toBeGreaterThanOrEqual(10);
});

describe.each(logs)('the sample %s in words', (name) => {
  const plan = scheduleOf(name);
  const schedule = readSchedule(readFileSync(sample(plan), 'utf8'), plan);
  const { document } = analyze(readFileSync(sample(name)), name, { schedule }, { guessEncoding });

  it('has its number in every title: the detectors measure what the words speak of', () => {
    for (const { id, title } of wording(document, 'C').findings) {
      if (WITHOUT_NUMBER.includes(id)) continue;
      expect(`${id}: ${title.parts.filter(({ large }) => large).length}`).not.toBe(`${id}: 0`);
    }
  });

  it('leaves no hole in any sentence and shows no Celsius in Fahrenheit', () => {
    const { reading, ...words } = wording(document, 'F');
    const said = stringsIn([words, { ...reading, rejected: [] }]);
    expect(said.filter((text) => /undefined|NaN|Infinity|\[object|\s{2}/.test(text))).toEqual([]);
    const bare = said.map((text) => text.replace(/“[^”]*”/g, ''));
    expect(bare.filter((text) => text.includes('°C'))).toEqual([]);
  });

  it('has words for every id of its account', () => {
    const { decisions, warnings, time, rejected } = document.source;
    const missing = idsWithoutWords({
      decisions: decisions.map(({ what }) => what),
      reasons: decisions.map(({ why }) => why),
      warnings,
      assumptions: time.assumptions,
      rejections: rejected.map(({ reason }) => reason),
    });
    expect(missing).toEqual([]);
  });

  it('is reported whole as text and as HTML', () => {
    expect(textReport(wording(document, 'C'))).toContain('\nCautions\n');
    const page = htmlReport(document, 'C');
    expect(page).toContain('class="curve-actual"');
    expect(page).not.toMatch(/NaN|undefined|Infinity/);
  });
});
