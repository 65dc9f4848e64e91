import { describe, expect, test } from 'vitest';
import { NBS_1926_END_POINTS } from '../../../core/reference/end-points-nbs-1926.ts';
import { againstCones, cellsOf, notRisingWithCone, notRisingWithRate } from './shared-reference.ts';

describe('the table of 1926', () => {
  againstCones(NBS_1926_END_POINTS, 'nbs-1926');

  test('rises with the cone, but for 010, printed below 011 at 150 °C/h', () => {
    expect(notRisingWithCone(NBS_1926_END_POINTS)).toEqual(['011 010 at 150']);
  });

  test('rises with the rate, but for the two cones printed with one value for both', () => {
    expect(notRisingWithRate(NBS_1926_END_POINTS)).toEqual(['09', '13']);
  });

  test('is from memory throughout', () => {
    expect(new Set(cellsOf(NBS_1926_END_POINTS).map((cell) => cell.obtained))).toEqual(
      new Set(['memory']),
    );
  });
});
