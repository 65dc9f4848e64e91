import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  civilFromDays,
  daysFromCivil,
  daysInMonth,
  isoInstant,
  movedInstant,
  secondsBetween,
} from '../../../../core/log/time/civil.ts';

test('days and dates agree with the platform over 400 years', () => {
  fc.assert(
    fc.property(fc.integer({ min: -70_000, max: 76_000 }), (days) => {
      const date = new Date(days * 86_400_000);
      const civil = civilFromDays(days);
      expect(civil).toEqual({
        year: date.getUTCFullYear(),
        month: date.getUTCMonth() + 1,
        day: date.getUTCDate(),
      });
      expect(daysFromCivil(civil.year, civil.month, civil.day)).toBe(days);
    }),
    { numRuns: 3000 },
  );
});

test('months have their days, February by the Gregorian rule', () => {
  expect([1, 4, 12, 13, 0].map((month) => daysInMonth(2023, month))).toEqual([31, 30, 31, 0, 0]);
  expect([2023, 2024, 1900, 2000].map((year) => daysInMonth(year, 2))).toEqual([28, 29, 28, 29]);
});

test('instants are written as ISO 8601', () => {
  expect(isoInstant(0, 0, 0)).toBe('1970-01-01T00:00:00Z');
  expect(isoInstant(19_796, 23_400, null)).toBe('2024-03-14T06:30:00');
  expect(isoInstant(19_796, 23_400.25, 60)).toBe('2024-03-14T06:30:00.25+01:00');
  expect(isoInstant(19_796, 86_399.9999999, -570)).toBe('2024-03-15T00:00:00-09:30');
  expect(isoInstant(19_796, -1, null)).toBe('2024-03-13T23:59:59');
});

test('instants are moved on their own offset', () => {
  expect(movedInstant('2024-03-14T06:30:00', -7 * 3600)).toBe('2024-03-13T23:30:00');
  expect(movedInstant('2024-02-28T23:59:59.75+01:00', 0.5)).toBe('2024-02-29T00:00:00.25+01:00');
  expect(movedInstant('1970-01-01T00:00:00Z', 86_400)).toBe('1970-01-02T00:00:00Z');
  expect(movedInstant('2024-03-14T06:30:00-09:30', 60)).toBe('2024-03-14T06:31:00-09:30');
  expect(() => movedInstant('yesterday', 0)).toThrow();
});

test('the seconds between instants are the platform’s, on the offsets they say', () => {
  const pairs = [
    ['2024-03-30T22:10:05', '2024-03-31T12:00:00.5'],
    ['2024-12-31T23:59:59Z', '2025-01-01T01:00:00+01:00'],
    ['2024-02-28T08:00:00-09:30', '2024-03-01T08:00:00Z'],
  ] as const;
  for (const [from, to] of pairs) {
    const utc = (at: string) => Date.parse(/Z|[+-]\d\d:\d\d$/.test(at) ? at : `${at}Z`);
    expect(secondsBetween(from, to)).toBeCloseTo((utc(to) - utc(from)) / 1000, 6);
    expect(secondsBetween(to, from)).toBeCloseTo((utc(from) - utc(to)) / 1000, 6);
  }
});

test('between a clock with an offset and one without, nothing is known', () => {
  expect(secondsBetween('2024-03-14T06:30:00', '2024-03-15T06:30:00Z')).toBeNull();
});
