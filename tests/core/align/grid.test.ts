import { describe, expect, it } from 'vitest';
import { AS_PLANNED, loggedTrace, searched, traceOfStretches } from '../../builders/alignment.ts';
import { firing } from '../../builders/trace.ts';

describe('the grid of the search', () => {
  const trace = traceOfStretches([
    { holdMinutes: 300 },
    ...AS_PLANNED,
    { rateCPerHour: 20, toC: 60 },
  ]);
  const { grid } = searched(trace);

  it('spends its points where legs can be: little rest before, no cold end', () => {
    expect(grid.celsius.length).toBeLessThanOrEqual(421);
    expect(grid.atSeconds[0]).toBeGreaterThan(4 * 3600);
    expect(grid.celsius.at(-1)).toBeGreaterThan(850);
    expect(grid.reachesEnd).toBe(false);
  });

  it('knows where heating begins', () => {
    expect(Math.abs(grid.atSeconds[grid.start]! - 5 * 3600)).toBeLessThan(400);
  });

  it('sees kinks at the corners and none in between, noise or not', () => {
    const noisy = searched(
      loggedTrace(firing(20, ...AS_PLANNED), { noiseC: 1.2, intervalSeconds: 120 }),
    ).grid;
    const kinkNear = (minutes: number) => {
      const i = noisy.atSeconds.findIndex((at) => at >= 60 * minutes);
      return noisy.kinks[i + 4]! - noisy.kinks[i - 4]!;
    };
    // The first climb takes an hour, then half an hour of hold, then 326 minutes to 1100 °C.
    expect(kinkNear(90)).toBeGreaterThan(5);
    expect(kinkNear(250)).toBeLessThan(3);
  });

  it('reaches the end of a record that ends hot', () => {
    expect(searched(traceOfStretches(AS_PLANNED.slice(0, 4))).grid.reachesEnd).toBe(true);
  });
});
