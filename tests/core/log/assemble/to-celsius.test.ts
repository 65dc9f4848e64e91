import { expect, test } from 'vitest';
import { isBelowAbsoluteZero, toCelsius } from '../../../../core/log/assemble/to-celsius.ts';

test('degrees of every scale, and none for millivolts', () => {
  expect(toCelsius(100, 'C')).toBe(100);
  expect(toCelsius(212, 'F')).toBeCloseTo(100, 9);
  expect(toCelsius(373.15, 'K')).toBeCloseTo(100, 9);
  expect(toCelsius(41.276, 'mV')).toBeNaN();
});

test('nothing is colder than absolute zero, and no logger reads it', () => {
  expect(isBelowAbsoluteZero(-274, 'C')).toBe(true);
  expect(isBelowAbsoluteZero(-460, 'F')).toBe(true);
  expect(isBelowAbsoluteZero(0, 'K')).toBe(true);
  expect(isBelowAbsoluteZero(2.9, 'K')).toBe(false);
  expect(isBelowAbsoluteZero(-200, 'C')).toBe(false);
});
