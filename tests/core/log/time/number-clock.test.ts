import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  numberClockOf,
  secondsOfNumberClock,
  type NumberClock,
} from '../../../../core/log/time/number-clock.ts';

const two = (value: number): string => String(value).padStart(2, '0');
/** Clocks so many minutes apart, written as numbers. */
const clocks = (form: NumberClock, stepMinutes: number, count = 20): number[] =>
  Array.from({ length: count }, (_, i) => {
    const minutes = 390 + i * stepMinutes;
    const [hour, minute] = [Math.floor(minutes / 60) % 24, minutes % 60];
    if (form === 'hhmm') return Number(`${hour}${two(minute)}`);
    return form === 'hhmmss' ? Number(`${hour}${two(minute)}00`) : hour + minute / 100;
  });

test.each(['hhmm', 'hhmmss', 'hh.mm'] as const)('%s is known by its hours of sixty', (form) => {
  expect(numberClockOf(clocks(form, 20))).toBe(form);
  expect(numberClockOf(clocks(form, 7))).toBe(form);
});

test('numbers that count are none', () => {
  const counted = (step: number): number[] => Array.from({ length: 40 }, (_, i) => i * step);
  for (const step of [1, 5, 7, 20, 30, 60, 100, 600, 0.1, 0.25, 0.5]) {
    expect([step, numberClockOf(counted(step))]).toEqual([step, null]);
  }
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 4000 }),
      fc.integer({ min: 0, max: 900 }),
      (step, from) => {
        const evenly = Array.from({ length: 30 }, (_, i) => from + i * step);
        expect(numberClockOf(evenly)).toBeNull();
      },
    ),
    { numRuns: 1000 },
  );
});

test('a few numbers, or numbers below zero, show no clock', () => {
  expect(numberClockOf([630, 650, 710])).toBeNull();
  expect(numberClockOf([-630, 650, 710, 730, 750])).toBeNull();
});

test('the seconds of the day that a number stands for', () => {
  expect(secondsOfNumberClock(630, 'hhmm')).toBe(6.5 * 3600);
  expect(secondsOfNumberClock(63_015, 'hhmmss')).toBe(6.5 * 3600 + 15);
  expect(secondsOfNumberClock(6.3, 'hh.mm')).toBe(6.5 * 3600);
  expect(secondsOfNumberClock(0.25, 'day-share')).toBe(6 * 3600);
  expect(secondsOfNumberClock(675, 'hhmm')).toBeNaN();
});
