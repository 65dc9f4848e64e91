import { describe, expect, it } from 'vitest';
import type { LinkPlan, NodePlan } from './network.ts';
import { Network } from './network.ts';

const body = (startKelvin: number, capacityJPerK: NodePlan['capacityJPerK']): NodePlan => ({
  name: 'body',
  startKelvin,
  capacityJPerK,
});
const surroundings = (startKelvin: number): NodePlan => ({
  name: 'surroundings',
  startKelvin,
  capacityJPerK: Infinity,
});

/** Seconds until the first node has cooled to `untilKelvin`, interpolated within the last step. */
const secondsToCool = (
  nodes: readonly NodePlan[],
  link: LinkPlan,
  untilKelvin: number,
  stepSeconds: number,
): number => {
  const network = new Network(nodes, [link], []);
  for (let step = 1; step < 10_000_000; step++) {
    const before = network.kelvin[0]!;
    network.step(stepSeconds);
    const after = network.kelvin[0]!;
    if (after <= untilKelvin) {
      return stepSeconds * (step - (untilKelvin - after) / (before - after));
    }
  }
  throw new Error('never cooled');
};

describe('the heat network against closed forms', () => {
  it('cools a lumped sphere by convection: Çengel ex. 4-1, 99 % in 9.94 s (printed as 10)', () => {
    // Çengel, Heat Transfer, example 4-1: sphere of 1 mm, k 35, ρ 8500, c 320, h 210.
    const radiusM = 0.0005;
    const areaM2 = 4 * Math.PI * radiusM ** 2;
    const capacityJPerK = 8500 * 320 * ((4 / 3) * Math.PI * radiusM ** 3);
    const took = secondsToCool(
      [body(400, capacityJPerK), surroundings(300)],
      { a: 0, b: 1, wattsPerKelvin: 210 * areaM2 },
      301,
      0.001,
    );
    expect(took).toBeCloseTo(9.94, 2);
  });

  // Closed form of C dT/dt = −σAT⁴: t = C/(3σA) · (1/T³ − 1/T0³) = 45.29 s.
  const radiationOnly = (stepSeconds: number): number =>
    secondsToCool(
      [body(1500, 1000), surroundings(0)],
      { a: 0, b: 1, exchangeAreaM2: 1 },
      500,
      stepSeconds,
    );

  it('cools by radiation only to 0 K, 1000 J/K, 1 m²: 1500 → 500 K in 45.29 s', () => {
    expect(radiationOnly(0.0005)).toBeCloseTo(45.29, 2);
  });

  it('is of first order in the step: half the step, half the error', () => {
    const closedForm = (1000 / (3 * 5.670374419e-8)) * (1 / 500 ** 3 - 1 / 1500 ** 3);
    const coarse = radiationOnly(0.2) - closedForm;
    const fine = radiationOnly(0.1) - closedForm;
    expect(coarse / fine).toBeGreaterThan(1.9);
    expect(coarse / fine).toBeLessThan(2.1);
  });

  it('stays stable at steps a thousand times the shortest time constant', () => {
    const network = new Network(
      [body(1500, 0.01), body(300, 1000), surroundings(300)],
      [
        { a: 0, b: 1, wattsPerKelvin: 10 },
        { a: 1, b: 2, wattsPerKelvin: 1 },
      ],
      [],
    );
    for (let step = 0; step < 50; step++) {
      network.step(1);
      expect(network.kelvin[0]).toBeLessThan(301.5);
      expect(network.kelvin[0]).toBeGreaterThanOrEqual(300);
    }
  });

  it('gives a body without capacity the weighted mean of its neighbours', () => {
    const network = new Network(
      [body(300, 0), surroundings(400), surroundings(1000)],
      [
        { a: 0, b: 1, wattsPerKelvin: 3 },
        { a: 0, b: 2, wattsPerKelvin: 1 },
      ],
      [],
    );
    network.step(1);
    expect(network.kelvin[0]).toBeCloseTo((3 * 400 + 1000) / 4, 9);
  });

  it('accounts for every joule of two bodies, a heater and a cold room', () => {
    const network = new Network(
      [body(900, 500), body(300, 2000), surroundings(290)],
      [
        { a: 0, b: 1, exchangeAreaM2: 0.1 },
        { a: 1, b: 2, wattsPerKelvin: 2 },
      ],
      [],
    );
    const stored = (): number => 500 * network.kelvin[0]! + 2000 * network.kelvin[1]!;
    const before = stored();
    for (let step = 0; step < 1000; step++) {
      network.watts[0] = 100;
      network.step(5);
    }
    expect(network.suppliedJ).toBe(500_000);
    expect(stored() - before).toBeCloseTo(network.suppliedJ - network.lostByLinksJ, 3);
  });
});
