import { describe, expect, it } from 'vitest';
import { requiredPower, steadyLoss } from '../../../core/thermal/wall-model.ts';

const INTERVAL_SECONDS = 120;
const EMPTY = { share: 1e-6, coupling: 100 };
const held = (startC: number, atC: number, hours: number) => {
  const celsius = new Float64Array((hours * 3600) / INTERVAL_SECONDS + 1).fill(atC);
  celsius[0] = startC;
  return { celsius, intervalSeconds: INTERVAL_SECONDS, roomC: startC };
};

describe('the power that a course requires', () => {
  it('of a wall at first is that of a semi-infinite solid: k·ΔT/√(π·α·t)', () => {
    // Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 5.7 (from memory): constant
    // surface temperature. With the wall's thickness and capacity as units k = 1/memory = α.
    const memorySeconds = 10 * 3600;
    const required = requiredPower(held(0, 10, 1), { memorySeconds, conductivityRise: 0 }, EMPTY);
    for (const minutes of [20, 30, 50]) {
      const atSeconds = minutes * 60;
      const flux = 10 / memorySeconds / Math.sqrt((Math.PI * atSeconds) / memorySeconds);
      expect(required[atSeconds / INTERVAL_SECONDS]! / flux).toBeCloseTo(1, 1);
    }
  });

  it('of a wall soaked through is its steady loss, computed otherwise', () => {
    const wall = { memorySeconds: 3 * 3600, conductivityRise: 0.9 };
    const required = requiredPower(held(20, 1000, 60), wall, EMPTY);
    expect(required.at(-1)! / steadyLoss(wall, 1000, 20)).toBeCloseTo(1, 2);
  });

  it('of a load far heavier than the wall is the load’s own heat', () => {
    // 0.1 °C/s of a load of 50 walls, whose heat rises by 0.0004 per °C: 5 °C/s and that.
    const celsius = Float64Array.from({ length: 40 }, (_, i) => 500 + 12 * i);
    const required = requiredPower(
      { celsius, intervalSeconds: INTERVAL_SECONDS, roomC: 500 },
      { memorySeconds: 36_000, conductivityRise: 0.8 },
      { share: 50, coupling: 1e6 },
    );
    expect(required[30]! / (0.1 * 50 * (1 + 0.4e-3 * 860))).toBeCloseTo(1, 1);
  });

  it('is none for a kiln that stands at its room’s temperature', () => {
    const required = requiredPower(
      held(20, 20, 2),
      { memorySeconds: 9000, conductivityRise: 1 },
      { share: 1, coupling: 100 },
    );
    for (const power of required) expect(power).toBeCloseTo(0, 12);
  });
});

describe('the steady loss', () => {
  it('grows faster than the temperature where conductivity does', () => {
    const wall = { memorySeconds: 9000, conductivityRise: 0.8 };
    expect(steadyLoss(wall, 1220, 20)).toBeGreaterThan(2.2 * steadyLoss(wall, 620, 20));
  });

  it('of a wall of constant conductivity is what wall and film pass in series', () => {
    // 100 °C over a wall of 1 and a film of 6·(1 + 0.004·Δ): x = 6·(1 + 0.004·Δ)·Δ = 100 − Δ.
    const outside = (-7 + Math.sqrt(49 + 4 * 0.024 * 100)) / (2 * 0.024);
    const loss = steadyLoss({ memorySeconds: 1, conductivityRise: 0 }, 120, 20);
    expect(loss).toBeCloseTo(100 - outside, 6);
  });
});
