import { describe, expect, it } from 'vitest';
import { Elements, hotFactor } from './elements.ts';

const PLAN = { ratedWatts: 11_500, ratedVolts: 240, circuits: 6, upperShare: 0.5, massKg: 6 };

const allWatts = (elements: Elements, volts: number, wireCelsius = 20): number =>
  elements.watts('upper', volts, wireCelsius) + elements.watts('lower', volts, wireCelsius);

describe('the elements', () => {
  it('give their rated power new, cold and at the rated voltage', () => {
    expect(allWatts(new Elements(PLAN, 1), 240)).toBeCloseTo(11_500, 6);
  });

  it('give (208/240)² = 0.7511 of it at 208 V, by V²/R', () => {
    expect(allWatts(new Elements(PLAN, 1), 208) / 11_500).toBeCloseTo(0.7511, 4);
  });

  it('give 0.9025 of it at 5 % less voltage and 0.909 at 10 % more resistance, by V²/R', () => {
    expect(allWatts(new Elements(PLAN, 1), 240 * 0.95) / 11_500).toBeCloseTo(0.9025, 6);
    expect(allWatts(new Elements(PLAN, 1.1), 240) / 11_500).toBeCloseTo(0.909, 3);
  });

  it('give 0.833 of it with one of six parallel circuits open', () => {
    const elements = new Elements(PLAN, 1);
    elements.openCircuit(2);
    expect(allWatts(elements, 240) / 11_500).toBeCloseTo(0.833, 3);
    expect(elements.liveCircuits('lower')).toBe(2);
    expect(elements.liveCircuits('upper')).toBe(3);
  });

  it('share a middle circuit between the halves', () => {
    const elements = new Elements({ ...PLAN, circuits: 3 }, 1);
    expect(elements.liveCircuits('lower')).toBe(1.5);
    expect(elements.liveCircuits('upper')).toBe(1.5);
    elements.openCircuit(0);
    expect(elements.liveCircuits('lower')).toBe(0.5);
    expect(elements.shareOfNew(240)).toBeCloseTo(2 / 3, 9);
  });

  it('take the hot wire’s resistance from the data sheet', () => {
    // Alloy maker's data sheet: 1.00 to 400 °C, 1.01 at 500, 1.02 at 600–700, 1.03 at 800–900,
    // 1.04 at 1000–1300, 1.05 at 1400.
    const printed: [number, number][] = [
      [20, 1],
      [400, 1],
      [500, 1.01],
      [650, 1.02],
      [850, 1.03],
      [1150, 1.04],
      [1400, 1.05],
      [1500, 1.05],
    ];
    for (const [celsius, factor] of printed) expect(hotFactor(celsius)).toBeCloseTo(factor, 9);
    expect(allWatts(new Elements(PLAN, 1), 240, 1200)).toBeCloseTo(11_500 / 1.04, 6);
  });
});
