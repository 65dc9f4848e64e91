import { describe, expect, test } from 'vitest';
import { isBeyond, reached } from '../../../core/findings/limit.ts';

describe('a limit on how far a leg is off its time', () => {
  const limit = { percent: 10, leastMinutes: 5, minutes: 20 };

  test.each([
    [9.9, 19.9, false],
    [0, 20, true],
    [10, 4.9, false],
    [10, 5, true],
  ])('%d % and %d min are beyond it: %s', (percent, minutes, beyond) => {
    expect(isBeyond(limit, percent, minutes)).toBe(beyond);
  });

  test('asks for both where no time alone is too long', () => {
    expect(isBeyond({ ...limit, minutes: Infinity }, 9, 500)).toBe(false);
    expect(isBeyond({ ...limit, minutes: Infinity }, 10, 500)).toBe(true);
  });
});

test('no limit stands beside a figure that keeps it', () => {
  const limits = { slowerPercent: 10, lateMinutes: 10, madeUpMinutes: 8 };
  expect(reached({ slowerPercent: 9.5, lateMinutes: 31 }, limits)).toEqual({ lateMinutes: 10 });
  expect(reached({ slowerPercent: 10 }, limits)).toEqual({ slowerPercent: 10 });
});
