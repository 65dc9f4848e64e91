import { expect, test } from 'vitest';
import {
  classOf,
  classOfStamp,
  isNumberClass,
  isTimeClass,
} from '../../../../core/log/text/cell-class.ts';
import { scanStamp } from '../../../../core/log/time/stamp.ts';

test.each([
  ['', 'empty'],
  ['25.5', 'number'],
  ['20240314', 'number'],
  ['25.5 °C', 'quantity'],
  ['2024-03-14 06:30', 'stamp'],
  ['14/03/2024', 'date'],
  ['06:30:00', 'clock'],
  ['1h 05m', 'duration'],
  ['OPEN', 'mark'],
  ['Door opened', 'text'],
  ['40/40/2024', 'text'],
  ['2019--0-6- 2 :13::1', 'text'],
  [`1${'0'.repeat(80)}`, 'text'],
])('%s is %s', (cell, kind) => {
  expect(classOf(cell, '.')).toBe(kind);
});

test('a stamp whose date cannot be one has no class', () => {
  expect(classOfStamp(scanStamp('40/40/2024 10:00')!)).toBeNull();
  expect(classOfStamp(scanStamp('14/03/2024 10:00')!)).toBe('stamp');
});

test('classes of times and of numbers', () => {
  expect(['stamp', 'date', 'clock', 'duration'].every((kind) => isTimeClass(kind as 'date'))).toBe(
    true,
  );
  expect(isTimeClass('number')).toBe(false);
  expect(isNumberClass('quantity')).toBe(true);
  expect(isNumberClass('mark')).toBe(false);
});
