import { describe, expect, test } from 'vitest';
import {
  IEC_60584_TOLERANCES,
  type ToleranceRange,
  type ToleranceRow,
} from '../../../core/reference/tolerances-iec-60584.ts';
import { againstShared, pairsOf } from './shared-reference.ts';

const at = (range: ToleranceRange, celsius: number): number =>
  range.constantC + range.perDegree * (celsius - range.sinceC);

const rowOf = (type: string, grade: ToleranceRow['class']): ToleranceRow =>
  IEC_60584_TOLERANCES.find((row) => row.types.some((t) => t === type) && row.class === grade)!;

const toleranceOf = (type: string, grade: ToleranceRow['class'], celsius: number): number => {
  const { ranges } = rowOf(type, grade);
  return at(
    ranges.find(({ fromC, toC }) => celsius >= fromC && celsius <= toC)!,
    celsius,
  );
};

describe('the tolerance classes of IEC 60584-1', () => {
  test('are those quoted for types K, N, R and S', () => {
    expect(toleranceOf('K', 'class-1', 300)).toBe(1.5);
    expect(toleranceOf('N', 'class-1', 1000)).toBeCloseTo(4, 10);
    expect(toleranceOf('K', 'class-2', 300)).toBe(2.5);
    expect(toleranceOf('N', 'class-2', 1200)).toBeCloseTo(9, 10);
    expect(toleranceOf('S', 'class-1', 1000)).toBe(1);
    expect(toleranceOf('R', 'class-1', 1300)).toBeCloseTo(1.6, 10);
    expect(toleranceOf('S', 'class-2', 1200)).toBeCloseTo(3, 10);
  });

  test('change without a jump of more than a hundredth of a degree', () => {
    for (const { ranges } of IEC_60584_TOLERANCES) {
      for (const [lower, upper] of pairsOf(ranges)) {
        expect(upper.fromC).toBe(lower.toC);
        expect(Math.abs(at(upper, upper.fromC) - at(lower, lower.toC))).toBeLessThan(0.01);
      }
    }
  });

  test('name a type once a class', () => {
    const named = IEC_60584_TOLERANCES.flatMap((row) => row.types.map((t) => `${t} ${row.class}`));
    expect(new Set(named).size).toBe(named.length);
  });

  againstShared('agree with the trade notes on which rows were seen', 'trade.md', (text) => {
    expect(text).toContain('K, N ±1.5 °C or 0.4 % (IEC 60584-1 class 1, to 1000 °C)');
    expect(text).toContain('±2.5 or 0.75 % (class 2, to 1200)');
    expect(text).toContain('S, R class 1 ±1 °C then 1 + 0.003(t − 1100); class 2 ±1.5 or 0.25 %');
    const seen = IEC_60584_TOLERANCES.filter((row) => row.obtained !== 'memory');
    expect([...new Set(seen.flatMap((row) => row.types))].sort()).toEqual(['K', 'N', 'R', 'S']);
  });
});
