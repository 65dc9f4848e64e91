import { describe, expect, it } from 'vitest';
import { plannedClock } from '../../../core/align/clock.ts';
import { boundaryCertainties } from '../../../core/align/certainty.ts';
import { layLegs } from '../../../core/align/lay.ts';
import { AS_PLANNED, searched, traceOfStretches } from '../../builders/alignment.ts';

const certaintiesOf = (stretches: typeof AS_PLANNED, schedule?: string) => {
  const { grid, legs } = searched(traceOfStretches(stretches), schedule);
  const { laying, tables } = layLegs(grid, legs, plannedClock(legs));
  return boundaryCertainties(grid, tables, laying);
};

describe('how certain a boundary is', () => {
  it('is high at sharp corners', () => {
    const certainties = certaintiesOf(AS_PLANNED);
    expect(certainties).toHaveLength(7);
    certainties.forEach((certainty) => {
      expect(certainty).toBeGreaterThan(0.8);
    });
  });

  it('is less where two ramps of one rate meet at no corner at all', () => {
    const straight = [
      { rateCPerHour: 100, toC: 1000 },
      { rateCPerHour: 200, toC: 300 },
    ];
    const schedule = (middle: string) => `rate_per_hour,target\n100,${middle}\n100,1000\n`;
    // Without a corner, only the target says where the boundary lies: two degrees are over a minute.
    const [blurred] = certaintiesOf(straight, schedule('500'));
    expect(blurred).toBeGreaterThan(0.6);
    expect(blurred).toBeLessThan(0.9999);
  });

  it('is unknown of a leg that never happened', () => {
    expect(certaintiesOf(AS_PLANNED.slice(0, 4)).at(-1)).toBeNull();
  });
});
