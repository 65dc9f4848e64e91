import { describe, expect, test } from 'vitest';
import { ASTM_C24_END_POINTS } from '../../../core/reference/end-points-astm-c24.ts';
import { againstCones, cellsOf, notRisingWithCone } from './shared-reference.ts';

describe('the pyrometric cone equivalents of ASTM C24', () => {
  // The copy marks all rows alike; its covering note says that cone 13 alone was seen.
  againstCones(ASTM_C24_END_POINTS, 'astm-c24', (cell) =>
    cell.cone === '13' ? { ...cell, obtained: 'seen' } : cell,
  );

  test('rises with the cone within each rate', () => {
    expect(notRisingWithCone(ASTM_C24_END_POINTS)).toEqual([]);
  });

  test('gives each cone one rate', () => {
    const cones = cellsOf(ASTM_C24_END_POINTS).map((cell) => cell.cone);
    expect(new Set(cones).size).toBe(cones.length);
  });
});
