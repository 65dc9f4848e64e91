import { expect, test } from 'vitest';
import {
  SectionClock,
  sectionKey,
  sectionValue,
} from '../../../../core/log/delimited/section-clock.ts';
import { TimeReader } from '../../../../core/log/time/time-reader.ts';
import { daysFromCivil } from '../../../../core/log/time/civil.ts';

test('lines of a head are known by their first cell', () => {
  expect(
    ['Date', 'Time:', 'Delta_X', 'Uhrzeit', 'Channels', ''].map((key) => sectionKey([key])),
  ).toEqual(['date', 'time', 'step', 'time', null, null]);
});

test('a value stands in its column, else in the first that has one', () => {
  expect(sectionValue(['Time', '06:30', '06:31'], 2)).toBe('06:31');
  expect(sectionValue(['Time', '06:30', ''], 2)).toBe('06:30');
  expect(sectionValue(['Time'], 2)).toBe('');
});

test('rows take the time of their section, one step apart', () => {
  const time = new TimeReader(
    { form: 'section', column: 1, order: 'year-first' },
    daysFromCivil(2024, 3, 14),
    '.',
  );
  const clock = new SectionClock(time, 1);
  expect(clock.note(['Date', '2024/03/14'])).toBe(true);
  expect(clock.note(['Time', '00:01:00'])).toBe(true);
  expect(clock.note(['Delta_X', '2.5'])).toBe(true);
  expect(clock.note(['Channels', '2'])).toBe(false);
  expect(time.read([], 0)).toBe(60);
  clock.advance();
  expect(time.read([], 0)).toBe(62.5);
  clock.note(['Time', '00:02:00']);
  expect(time.read([], 0)).toBe(120);
});
