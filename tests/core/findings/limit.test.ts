import { describe, expect, test } from 'vitest';
import { isBeyond } from '../../../core/findings/limit.ts';

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
