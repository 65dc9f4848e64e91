import { expect, it } from 'vitest';
import { zReadingDecisions } from '../../../core/model/options.ts';
import { decisionsSaid } from '../../../renderer/desk/rule-words.ts';

const ALL = zReadingDecisions.parse({
  encoding: 'utf-8',
  delimiter: ';',
  decimalMark: ',',
  headerLine: null,
  timeColumns: ['Datum', 'Uhr'],
  timeUnit: 'min',
  timeFrom: 'elapsed',
  dayOrder: 'day-first',
  timeZone: 'Europe/Berlin',
  firstDate: '2026-03-14',
  intervalSeconds: 30,
  firing: 2,
  temperatureColumn: 'Ofen',
  unit: 'F',
  setpointColumn: null,
  outputColumn: 'Stellgrad',
  coldJunctionColumn: null,
  zoneColumns: [],
  coupleType: 'K',
  coldJunctionC: 25,
  noReadingMarks: ['OPEN'],
});

it('a rule is told in a few words for each decision, and every decision has words', () => {
  expect(Object.keys(ALL)).toEqual(expect.arrayContaining(Object.keys(zReadingDecisions.shape)));
  const said = decisionsSaid(ALL);
  expect(said.split(', ')).toHaveLength(Object.keys(ALL).length);
  expect(said).toContain('the kiln’s temperature from “Ofen”');
  expect(said).toContain('time from “Datum” and “Uhr”');
  expect(decisionsSaid({ unit: 'F', dayOrder: 'day-first' })).toBe(
    'readings in degrees Fahrenheit, dates day first',
  );
});
