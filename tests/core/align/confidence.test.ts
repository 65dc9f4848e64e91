import { describe, expect, it } from 'vitest';
import { plannedClock } from '../../../core/align/clock.ts';
import { confidenceOf } from '../../../core/align/confidence.ts';
import { layLegs } from '../../../core/align/lay.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';

describe('confidence', () => {
  const { grid, legs } = searched(traceOfStretches(AS_PLANNED));
  const { laying, tables } = layLegs(grid, legs, plannedClock(legs));
  const certain = legs.map(() => 1);

  it('is the product of agreement and certainty', () => {
    const full = confidenceOf(grid, tables, laying, certain);
    expect(full).toBeGreaterThan(0.8);
    expect(full).toBeLessThanOrEqual(1);
    expect(
      confidenceOf(
        grid,
        tables,
        laying,
        legs.map(() => 0.5),
      ),
    ).toBeCloseTo(full / 2, 9);
  });

  it('falls with every leg that is missing between others', () => {
    const holed = { ...laying, legs: laying.legs.map((leg, k) => (k === 1 ? null : leg)) };
    expect(confidenceOf(grid, tables, holed, certain)).toBeLessThan(
      confidenceOf(grid, tables, laying, certain) - 0.03,
    );
  });

  it('is nothing where no leg was found', () => {
    const none = { ...laying, legs: legs.map(() => null) };
    expect(
      confidenceOf(
        grid,
        tables,
        none,
        legs.map(() => null),
      ),
    ).toBe(0);
  });
});
