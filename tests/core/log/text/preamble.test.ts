import { describe, expect, test } from 'vitest';
import {
  declaredDayOrder,
  declaredDecimalMark,
  declaredDelimiter,
  declaredInterval,
  declaredUnit,
  makePreamble,
  preambleDates,
} from '../../../../core/log/text/preamble.ts';

test('lines become names and values', () => {
  const { entries } = makePreamble([
    '# Device: kiln 2',
    'Log Interval = 00:30:00,,,',
    'prose',
    '"Unit";"°C"',
  ]);
  expect(entries).toEqual([
    { key: 'Device', value: 'kiln 2' },
    { key: 'Log Interval', value: '00:30:00' },
    { key: 'Unit"', value: '°C' },
  ]);
});

describe('the unit', () => {
  test.each([
    [['Unit: °F'], 'F'],
    [['Temperature = °C'], 'C'],
    [['Einheit;Celsius'], 'C'],
    [['Heat from 30.00°C to 800.00 °C'], 'C'],
    [['From 30 °C to 80 °F'], null],
    [['Unit: apples'], null],
  ])('%j', (lines, unit) => {
    expect(declaredUnit(makePreamble(lines))).toBe(unit);
  });
});

describe('the interval', () => {
  test.each([
    ['Log interval: 00:10:00', 600],
    ['Interval,30 s', 30],
    ['Sampling (min): 2', 120],
    ['Abtastrate: 5', 5],
    ['Interval: often', null],
  ])('%s', (line, seconds) => {
    expect(declaredInterval(makePreamble([line]))).toBe(seconds);
  });
});

test('patterns that spell out the order of day and month', () => {
  expect(declaredDayOrder(['Date (DD/MM/YYYY)'])).toBe('day-first');
  expect(declaredDayOrder(['x', 'mm-dd-yy'])).toBe('month-first');
  expect(declaredDayOrder(['TT.MM.JJJJ'])).toBe('day-first');
  expect(declaredDayOrder(['yyyy-mm-dd'])).toBe('year-first');
  expect(declaredDayOrder(['Date'])).toBeNull();
});

test('dates as values', () => {
  const dates = preambleDates(makePreamble(['Started: 26/10/2021 14:40:00', 'Door: opened']));
  expect(dates.map(({ date }) => date.map(({ value }) => value))).toEqual([[26, 10, 2021]]);
});

test('declared separators', () => {
  expect(declaredDelimiter(makePreamble(['sep=;']))).toBe(';');
  expect(declaredDelimiter(makePreamble(['#SEPARATOR:SEMICOLON']))).toBe(';');
  expect(declaredDelimiter(makePreamble(['Separator,Tab']))).toBe('\t');
  expect(declaredDelimiter(makePreamble(['Separator plates: 3']))).toBeNull();
  expect(declaredDecimalMark(makePreamble(['#DECIMAL:POINT']))).toBe('.');
  expect(declaredDecimalMark(makePreamble(['Decimal_Separator;,']))).toBeNull();
  expect(declaredDecimalMark(makePreamble(['Dezimalzeichen: Komma']))).toBe(',');
});
