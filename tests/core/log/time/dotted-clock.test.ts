import { expect, test } from 'vitest';
import { isDottedClock } from '../../../../core/log/time/dotted-clock.ts';

test.each(['6.30', '06.30', '23.59.59'])('%s is a clock with points', (cell) => {
  expect(isDottedClock(cell)).toBe(true);
});

test.each(['24.00', '6.60', '6.3', '6.300', '-6.30', '6:30', ''])('%j is none', (cell) => {
  expect(isDottedClock(cell)).toBe(false);
});
