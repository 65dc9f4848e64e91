import { expect, test } from 'vitest';
import { isSmallHour, secondsOfClock } from '../../../../core/log/time/clock-seconds.ts';

test.each([
  [[6, 30], null, 23_400],
  [[12, 0, 5], 'am', 5],
  [[12, 0], 'pm', 43_200],
  [[1, 0], 'pm', 46_800],
  [[14, 5], 'pm', 50_700],
  [[26, 0], null, 93_600],
] as const)('%j %s is %i s', (clock, half, seconds) => {
  expect(secondsOfClock(clock, half)).toBe(seconds);
});

test.each([
  [[6, 60], null],
  [[14, 5], 'am'],
  [[25, 0], 'pm'],
] as const)('%j %s is no time of day', (clock, half) => {
  expect(secondsOfClock(clock, half)).toBeNull();
});

test('the small hours of a night come after midnight', () => {
  expect(
    [
      [12, 10],
      [2, 30],
      [11, 30],
    ].map(isSmallHour),
  ).toEqual([true, true, false]);
  expect(isSmallHour(null)).toBe(false);
});
