import { describe, expect, it } from 'vitest';
import { hotPowerFactor } from '../../../core/thermal/hot-wire.ts';

describe('power of hot wire', () => {
  it.each([
    [20, 1],
    [400, 1],
    [700, 1 / 1.02],
    [1100, 1 / 1.04],
    [1400, 1 / 1.05],
    [1600, 1 / 1.05],
  ])('at %s °C is that of the alloy maker’s data sheet', (celsius, factor) => {
    expect(hotPowerFactor(celsius)).toBeCloseTo(factor, 9);
  });

  it('lies between printed points in between', () => {
    expect(1 / hotPowerFactor(450)).toBeCloseTo(1.005, 9);
  });
});
