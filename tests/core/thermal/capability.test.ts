import { describe, expect, it } from 'vitest';
import { fired } from '../../builders/fired.ts';
import { THICK_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';

describe('what a kiln can do against temperature', () => {
  const setup = {
    seed: 31,
    kiln: THICK_BRICK,
    schedule: FAST_GLAZE,
    loadKg: 40,
    roomC: 20,
    logger: { intervalSeconds: 60, noiseC: 0.4 },
  };
  const { capability } = fired(setup).document.elements!;

  // Full power runs from 590 to 1080 °C; a slope is a mean over 25 °C to either side.
  it('is told where the record shows it climb at full power and cool by itself', () => {
    const temperatures = capability.map(({ celsius }) => celsius);
    expect(temperatures.length).toBeGreaterThan(4);
    expect(Math.min(...temperatures)).toBeGreaterThanOrEqual(600);
    expect(Math.max(...temperatures)).toBeLessThanOrEqual(1105);
  });

  it('falls with temperature: slower climbs, faster cooling, less power over loss', () => {
    const [first, last] = [capability[0]!, capability.at(-1)!];
    expect(last.heatingCPerHour).toBeLessThan(first.heatingCPerHour);
    expect(last.coolingCPerHour).toBeLessThan(first.coolingCPerHour);
    expect(last.powerToLoss).toBeLessThan(first.powerToLoss);
  });

  it('holds the ratio that a hold of 30 hours settles at', () => {
    const { firing } = fired(
      {
        ...setup,
        schedule: {
          name: 'soak',
          unit: 'C',
          segments: [{ ratePerHour: 200, target: 900, holdMinutes: 1800 }],
        },
        record: { untilC: 850, atMostHours: 40 },
      },
      { schedule: null },
    );
    const off = firing.truth.shutOffSeconds!;
    const settled = firing.outputPercent.filter(
      (_, i) => firing.atSeconds[i]! > off - 7200 && firing.atSeconds[i]! < off,
    );
    const truth = 100 / (settled.reduce((sum, value) => sum + value, 0) / settled.length);
    const told = capability.find(({ celsius }) => celsius === 900)!;
    expect(told.low).toBeLessThan(truth);
    expect(told.high).toBeGreaterThan(truth);
  });
});
