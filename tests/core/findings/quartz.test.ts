import { expect, test } from 'vitest';
import { quartzLimit } from '../../../core/findings/quartz.ts';

test('large ware of 16 mm is allowed the 50 °C/h of the text on sanitary ware (reference notes)', () => {
  expect(quartzLimit({ thicknessMm: 16 })).toBe(50);
});

test('the limit falls with the square of the thickness, and no lower than any text asks', () => {
  expect(quartzLimit(undefined)).toBe(200);
  expect(quartzLimit({ thicknessMm: 12 })).toBeCloseTo(quartzLimit({ thicknessMm: 8 }) / 2.25, 6);
  expect(quartzLimit({ thicknessMm: 40 })).toBe(50);
});
