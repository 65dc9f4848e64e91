import { describe, expect, test } from 'vitest';
import { IRON_FREE_END_POINTS } from '../../../core/reference/end-points-iron-free.ts';
import { againstCones, notRisingWithCone, notRisingWithRate } from './shared-reference.ts';

describe("the cone maker's chart of iron-free cones (2016)", () => {
  againstCones(IRON_FREE_END_POINTS, 'chart-iron-free');

  test('rises with the cone and with the rate', () => {
    expect(notRisingWithCone(IRON_FREE_END_POINTS)).toEqual([]);
    expect(notRisingWithRate(IRON_FREE_END_POINTS)).toEqual([]);
  });
});
