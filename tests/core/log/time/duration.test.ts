import { expect, test } from 'vitest';
import { parseDuration } from '../../../../core/log/time/duration.ts';

test.each([
  ['2d 03:04:05', 183_845],
  ['2 days, 3:04:05', 183_845],
  ['2.03:04:05', 183_845],
  ['2:03:04:05', 183_845],
  ['1 Tag 00:00:00', 86_400],
  ['1h 05m 20s', 3920],
  ['90 min 5 s', 5405],
  ['1h05m', 3900],
  ['2h', 7200],
  ['90 min', 5400],
  ['1.5 h', 5400],
  ['1,5 Std', 5400],
  ['90.5 min', 5430],
  ['1200 ms', 1.2],
  ['0.5 d', 43_200],
  ['45 s', 45],
  ['PT1H05M20S', 3920],
  ['P2DT3H', 183_600],
  ['PT90M', 5400],
])('%s', (text, seconds) => {
  expect(parseDuration(text)).toBe(seconds);
});

test.each([
  '',
  '5',
  '25.5',
  '12:30',
  '12:30:00',
  'h',
  '5 apples',
  'P',
  'PT',
  'part',
  '2024-03-14',
  '1'.repeat(99),
])('%s is read elsewhere or not at all', (text) => {
  expect(parseDuration(text)).toBeNaN();
});
