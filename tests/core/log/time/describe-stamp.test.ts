import { expect, test } from 'vitest';
import { describeStamp } from '../../../../core/log/time/describe-stamp.ts';
import { scanStamp } from '../../../../core/log/time/stamp.ts';

test.each([
  ['2024-03-14 06:30:00', 'year-first', 'YYYY-MM-DD hh:mm:ss'],
  ['14.03.24 06:30', 'day-first', 'DD.MM.YY hh:mm'],
  ['3/14/2024 6:30:00 PM', 'month-first', 'M/DD/YYYY hh:mm:ss am/pm'],
  ['01-Sep-21 12:30:00', 'year-first', 'DD-MMM-YY hh:mm:ss'],
  ['Mar 14 06:30:00', 'year-first', 'MMM DD hh:mm:ss'],
  ['2024-03-14T06:30:00.5Z', 'year-first', 'YYYY-MM-DD hh:mm:ss.f±hh:mm'],
  ['24-03-14 06:30', 'year-first', 'YY-MM-DD hh:mm'],
  ['20240314063000', 'year-first', 'YYYYMMDD hh:mm:ss'],
] as const)('%s', (text, order, pattern) => {
  expect(describeStamp(scanStamp(text)!, order)).toBe(pattern);
});
