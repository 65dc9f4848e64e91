import { describe, expect, test } from 'vitest';
import { ASTM_E230_TOLERANCES } from '../../../core/reference/tolerances-astm-e230.ts';
import { againstShared, pairsOf } from './shared-reference.ts';

describe('the standard grade of ASTM E230', () => {
  againstShared('is ±2.2 °C or 0.75 % for types K and N', 'trade.md', (text) => {
    expect(text).toContain('ASTM E230 standard ±2.2 or 0.75 %');
    const row = ASTM_E230_TOLERANCES.find(({ types }) => types.includes('K'))!;
    expect(row.types).toEqual(['K', 'N']);
    expect(row.ranges.map((range) => range.constantC)).toEqual([2.2, 0]);
    expect(row.ranges.map((range) => range.perDegree)).toEqual([0, 0.0075]);
  });

  test('has every type once', () => {
    const named = ASTM_E230_TOLERANCES.flatMap((row) => [...row.types]).sort();
    expect(named).toEqual(['B', 'E', 'J', 'K', 'N', 'R', 'S', 'T']);
  });

  test('changes without a jump of more than a hundredth of a degree', () => {
    for (const { ranges } of ASTM_E230_TOLERANCES) {
      for (const [lower, upper] of pairsOf(ranges)) {
        expect(upper.fromC).toBe(lower.toC);
        const jump = upper.perDegree * (upper.fromC - upper.sinceC) - lower.constantC;
        expect(Math.abs(jump)).toBeLessThan(0.01);
      }
    }
  });
});
