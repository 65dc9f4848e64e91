import { describe, expect, it } from 'vitest';
import { plannedClock } from '../../../core/align/clock.ts';
import { layLegs } from '../../../core/align/lay.ts';
import { refineLaying } from '../../../core/align/refine.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';
import { firing } from '../../builders/trace.ts';

describe('a laying taken to the full samples', () => {
  const trace = traceOfStretches(AS_PLANNED);
  const { grid, legs } = searched(trace);
  const { laying } = layLegs(grid, legs, plannedClock(legs));
  const refined = refineLaying(trace, grid, laying, legs, null);

  it('ends each leg within a minute of its corner, closer than the grid can', () => {
    const spacing = grid.atSeconds[11]! - grid.atSeconds[10]!;
    expect(spacing).toBeGreaterThan(60);
    const corners = firing(20, ...AS_PLANNED)
      .slice(1)
      .map(([minutes]) => 60 * minutes);
    refined.legs.forEach((leg, k) => {
      expect(Math.abs(leg!.endSeconds - corners[k]!)).toBeLessThan(75);
    });
  });

  it('gives each leg its own temperatures and rate', () => {
    expect(refined.legs[3]!.startC).toBeCloseTo(1100, -0.4);
    expect(refined.legs[3]!.endC).toBeCloseTo(1220, -0.4);
    expect(refined.legs[3]!.rateCPerHour).toBeCloseTo(60, -0.5);
  });

  it('ends the cooling with the record', () => {
    expect(refined.cooling!.endSeconds).toBe(trace.atSeconds.at(-1));
  });
});
