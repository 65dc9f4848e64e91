import { expect, it } from 'vitest';
import {
  bandsSection,
  checksSection,
  readingSection,
} from '../../../../core/report/html/reading.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

const words = wording(exampleDocument('troubled-firing'), 'C');

it('the account shows every decision and every rejected row, as data', () => {
  const { markup } = readingSection(words);
  for (const { line } of words.reading.rejected) expect(markup).toContain(`>${line}</td>`);
  expect(markup).toContain('Lid opened &lt;b&gt;once&lt;/b&gt;');
  expect(markup.match(/certain<\/td>/g)!.length).toBeGreaterThan(5);
});

it('rows that are not listed are owned', () => {
  const reading = { ...words.reading, rejectedUnlisted: 7 };
  expect(readingSection({ ...words, reading }).markup).toContain('7 more are counted');
});

it('bands are left out where there are none', () => {
  expect(bandsSection(words)?.markup).toContain('Quartz inversion');
  expect(bandsSection({ ...words, bands: [] })).toBeNull();
});

it('every check is listed with its outcome', () => {
  const { markup } = checksSection(words);
  expect(markup.match(/<tr>/g)).toHaveLength(words.checks.length + 1);
  expect(markup).toContain('no clean bill of health');
});
