import { describe, expect, it } from 'vitest';
import { Ware } from './ware.ts';

/** Heat taken up from room to 1000 °C, J. */
const heatOf = (ware: Ware, upwards: boolean): number => {
  let total = 0;
  for (let i = 0; i < 9800; i++) {
    const celsius = upwards ? 20.05 + i * 0.1 : 999.95 - i * 0.1;
    total += ware.capacityJPerK(celsius) * 0.1;
    if (upwards) ware.reached(celsius);
  }
  return total;
};

describe('the ware', () => {
  it('takes about 1 kJ/(kg·K) fired, as clay ware does (from memory)', () => {
    const ware = new Ware({ massKg: 1, state: 'fired', dampShare: 0, furnitureKg: 0 });
    expect(heatOf(ware, true) / 980).toBeGreaterThan(900);
    expect(heatOf(ware, true) / 980).toBeLessThan(1100);
  });

  it('takes the heat of its water once, on the way up: 2257 kJ/kg for the free water', () => {
    const fired = new Ware({ massKg: 40, state: 'fired', dampShare: 0, furnitureKg: 0 });
    const dry = new Ware({ massKg: 40, state: 'green', dampShare: 0, furnitureKg: 0 });
    const damp = new Ware({ massKg: 40, state: 'green', dampShare: 0.02, furnitureKg: 0 });
    const dampUp = heatOf(damp, true);
    const boundWater = heatOf(dry, true) - heatOf(fired, true);
    // Steam tables: 2257 kJ/kg at 100 °C.
    expect((dampUp - boundWater - heatOf(fired, true)) / (40 * 0.02 * 2_257_000)).toBeCloseTo(1, 3);
    expect(boundWater).toBeGreaterThan(0);
    expect(heatOf(damp, false)).toBeCloseTo(heatOf(fired, false), 3);
  });
});
