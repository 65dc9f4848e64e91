import { describe, expect, it } from 'vitest';
import { plannedClock } from '../../../core/align/clock.ts';
import { layLegs } from '../../../core/align/lay.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';

describe('laying legs', () => {
  const { grid, legs } = searched(traceOfStretches(AS_PLANNED));
  const { laying, tables } = layLegs(grid, legs, plannedClock(legs));

  it('gives ordered stretches that follow on each other', () => {
    laying.legs.slice(1).forEach((leg, k) => {
      expect(leg!.from).toBe(laying.legs[k]!.to);
    });
    expect(laying.off).toBe(laying.legs.at(-1)!.to);
  });

  it('costs no more than any arrangement made by moving one of its boundaries', () => {
    const costWith = (moved: number, by: number): number => {
      const points = [laying.legs[0]!.from, ...laying.legs.map((leg) => leg!.to)];
      points[moved]! += by;
      const stages = tables.stages.reduce(
        (sum, stage, k) => sum + stage.cost(points[k]!, points[k + 1]!),
        0,
      );
      return (
        tables.best[0]![points[0]!]! + stages + tables.endings[legs.length]![points[legs.length]!]!
      );
    };
    expect(costWith(0, 0)).toBeCloseTo(laying.cost, 6);
    for (let moved = 0; moved <= legs.length; moved++) {
      for (const by of [-3, -2, -1, 1, 2, 3]) {
        const cost = costWith(moved, by);
        if (Number.isNaN(cost)) continue; // off the grid
        expect(cost).toBeGreaterThanOrEqual(laying.cost - 1e-9);
      }
    }
  });

  it('finds no end of heating in a record that stops before it', () => {
    const cut = searched(traceOfStretches(AS_PLANNED.slice(0, 5)));
    expect(layLegs(cut.grid, cut.legs, plannedClock(cut.legs)).laying.off).toBeNull();
  });
});
