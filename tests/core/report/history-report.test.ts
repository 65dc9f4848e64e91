import { expect, test } from 'vitest';
import { historyOf } from '../../../core/history/history.ts';
import { historyReport } from '../../../core/report/history-report.ts';
import { historyWords } from '../../../core/wording/history.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { ofPowers } from '../../builders/histories.ts';

const reported = (powers: readonly (number | null)[]) =>
  historyReport(historyWords(historyOf(ofPowers(powers)), speechIn('C')));

test('a history is a table of firings, then what they say together, then cautions', () => {
  const text = reported([1, 1, 1, 1, 0.8, 0.8, 0.8, null]);
  const places = ['#  began', 'firing-08.csv', 'Power\n-----', 'Findings', 'Cautions'].map((part) =>
    text.indexOf(part),
  );
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(text).toContain('◆ act: From firing 5 on the kiln has had');
  expect(text).toContain('lock it out');
});

test('a history without findings says so, and no line is too long', () => {
  const text = reported([1, 1, 1]);
  expect(text).toContain('None.');
  for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
});
