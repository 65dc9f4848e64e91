import { expect, test } from 'vitest';
import { stampMs, worldMs } from '../../../core/history/stamp.ts';

test('a stamp is read on its own clock', () => {
  expect(stampMs('1970-01-02T00:00:01')).toBe(86_401_000);
  expect(stampMs('1970-01-01T06:30+02:00')).toBe(6.5 * 3_600_000);
  expect(stampMs('yesterday')).toBeNaN();
});

test('an offset puts it into world time', () => {
  expect(worldMs('1970-01-01T06:30:00+02:00')).toBe(4.5 * 3_600_000);
  expect(worldMs('1970-01-01T06:30:00-0130')).toBe(8 * 3_600_000);
  expect(worldMs('1970-01-01T06:30:00Z')).toBe(6.5 * 3_600_000);
  expect(worldMs('')).toBeNaN();
});
