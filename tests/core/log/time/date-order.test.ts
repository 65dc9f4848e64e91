import { expect, test } from 'vitest';
import { daysFromCivil } from '../../../../core/log/time/civil.ts';
import { daysOfDate, ordersOf } from '../../../../core/log/time/date-order.ts';
import { scanStamp } from '../../../../core/log/time/stamp.ts';

const days = (text: string, order: 'day-first' | 'month-first' | 'year-first'): number =>
  daysOfDate(scanStamp(`${text} 10:00`)!.date, order);

test('the order decides between day and month, and the year shows itself', () => {
  expect(days('03/04/2024', 'day-first')).toBe(daysFromCivil(2024, 4, 3));
  expect(days('03/04/2024', 'month-first')).toBe(daysFromCivil(2024, 3, 4));
  expect(days('2024-03-04', 'day-first')).toBe(daysFromCivil(2024, 3, 4));
  expect(days('03-04-05', 'year-first')).toBe(daysFromCivil(2003, 4, 5));
  expect(days('03-04-05', 'day-first')).toBe(daysFromCivil(2005, 4, 3));
});

test('two digits are of this century below 69, as in POSIX strptime', () => {
  expect(days('01/02/68', 'day-first')).toBe(daysFromCivil(2068, 2, 1));
  expect(days('01/02/69', 'day-first')).toBe(daysFromCivil(1969, 2, 1));
});

test('a named month needs no order', () => {
  for (const order of ['day-first', 'month-first', 'year-first'] as const) {
    expect(days('14 Mar 2024', order)).toBe(daysFromCivil(2024, 3, 14));
    expect(days('Mar 14, 2024', order)).toBe(daysFromCivil(2024, 3, 14));
    expect(days('2024 Mar 14', order)).toBe(daysFromCivil(2024, 3, 14));
  }
});

test('a date that does not exist is NaN', () => {
  expect(days('31/02/2024', 'day-first')).toBeNaN();
  expect(days('14/03/2024', 'month-first')).toBeNaN();
  expect(days('2024-13-01', 'year-first')).toBeNaN();
});

test('orders in which a date can be read at all', () => {
  const orders = (text: string) => ordersOf(scanStamp(`${text} 10:00`)!);
  expect(orders('2024-03-04')).toEqual(['year-first']);
  expect(orders('3 Mar 2024')).toEqual(['year-first']);
  expect(orders('03/04/2024')).toEqual(['day-first', 'month-first']);
  expect(orders('03/04/24')).toHaveLength(3);
});
