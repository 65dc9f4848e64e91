import { expect, test } from 'vitest';
import { letterOf, noteOn } from '../../../core/wording/letters.ts';
import { finding } from './builders.ts';

test('findings are lettered as the columns of a spreadsheet are', () => {
  expect([0, 25, 26, 27, 51, 52, 701, 702].map(letterOf).join()).toBe('A,Z,AA,AB,AZ,BA,ZZ,AAA');
});

test('a note is named by its finding’s place in the document', () => {
  const findings = [finding('overfired'), finding('overshoot')];
  expect(noteOn(findings, 'overshoot')).toBe('note B');
  expect(noteOn(findings, 'ramp-slow')).toBeNull();
});
