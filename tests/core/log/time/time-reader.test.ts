import { describe, expect, test } from 'vitest';
import {
  clockSeconds,
  joinedStamp,
  stampOfParts,
  TimeReader,
} from '../../../../core/log/time/time-reader.ts';
import { daysFromCivil } from '../../../../core/log/time/civil.ts';
import type { TimePlan } from '../../../../core/log/columns/time-plan.ts';

const DAY = daysFromCivil(2024, 3, 14);
const reader = (plan: TimePlan): TimeReader => new TimeReader(plan, DAY, '.');

describe('the time of a row', () => {
  test('from a stamp, in seconds from the first day', () => {
    const stamps = reader({ form: 'stamp', column: 1, order: 'day-first' });
    expect(stamps.read(['x', '14/03/2024 00:00:05'], 0)).toBe(5);
    expect(stamps.read(['x', '15/03/2024 00:00:00.5'], 0)).toBe(86_400.5);
    expect(stamps.read(['x', '31/02/2024 00:00:00'], 0)).toBeNaN();
    expect(stamps.read(['x', '14/03/2024 25:00:00'], 0)).toBeNaN();
    expect(stamps.read(['x'], 0)).toBeNaN();
    expect(stamps.isEmpty(['x', ''])).toBe(true);
  });

  test('from a stamp with its offset, as one instant', () => {
    const stamps = reader({ form: 'stamp', column: 0, order: 'year-first' });
    const winter = stamps.read(['2024-03-31T01:59:00+01:00'], 0);
    expect(stamps.offsetMinutes).toBe(60);
    expect(stamps.read(['2024-03-31T03:00:00+02:00'], 0) - winter).toBe(60);
  });

  test('from date and clock apart', () => {
    const apart = reader({
      form: 'date-and-clock',
      column: 0,
      clockColumn: 2,
      order: 'year-first',
    });
    expect(apart.read(['2024-03-14', '', '06:30'], 0)).toBe(23_400);
    expect(apart.read(['20240314', '', '63000'], 0)).toBe(23_400);
    expect(apart.read(['2024-03-14', '', '06.30.00'], 0)).toBe(23_400);
    expect(apart.read(['2024-03-14', '', ''], 0)).toBeNaN();
  });

  test('from the parts of a date', () => {
    const parts = reader({ form: 'parts', columns: [0, 1, 2, 3, 4, -1], order: 'year-first' });
    expect(parts.read(['2024', '3', '14', '6', '30'], 0)).toBe(23_400);
    expect(parts.isEmpty(['', '', '', '', ''])).toBe(true);
  });

  test('from a clock, a number, an interval or the head of a section', () => {
    expect(reader({ form: 'clock', column: 0 }).read(['25:00:00'], 0)).toBe(90_000);
    expect(reader({ form: 'number', column: 0 }).read(['1.5e2'], 0)).toBe(150);
    expect(reader({ form: 'number', column: 0 }).read(['90 s'], 0)).toBeNaN();
    expect(reader({ form: 'clock', column: 0 }).read(['90 min'], 0)).toBe(5400);
    const interval = reader({ form: 'interval', seconds: 30 });
    expect([0, 1, 2].map((row) => interval.read([], row))).toEqual([0, 30, 60]);
    const section = reader({ form: 'section', column: 0, order: 'year-first' });
    expect(section.read([], 0)).toBeNaN();
    section.sectionSeconds = 77;
    expect(section.read([], 0)).toBe(77);
  });
});

test('pieces of stamps', () => {
  expect(joinedStamp('2024-03-14', '930')).toBe('2024-03-14 0930');
  expect(joinedStamp('', '10:00')).toBe('');
  expect(stampOfParts(['24', '3', '4', '5'])).toBe('2024-3-4 5:0:0');
  expect(stampOfParts(['2024', '3', '', '5'])).toBe('');
  expect(joinedStamp('45365', '0.270833333')).toBe('2024-3-14 6:30:00');
  expect(joinedStamp('45365', '6:30')).toBe('2024-3-14 6:30');
  expect(clockSeconds('23.59')).toBe(86_340);
  expect(clockSeconds('1h 05m')).toBe(3900);
  expect(clockSeconds('2024-03-14 10:00')).toBeNaN();
});
