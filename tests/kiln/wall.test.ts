import { describe, expect, it } from 'vitest';
import type { Material } from './materials.ts';
import { DENSE_BRICK, FIBRE_BOARD, LIGHT_BRICK, SILICATE_SLAB } from './materials.ts';
import { Network } from './network.ts';
import type { Outside, WallPlan } from './wall.ts';
import { Wall } from './wall.ts';

const plain = (conductivity: number, densityKgPerM3 = 500, heatCapacity = 1000): Material => ({
  name: 'plain',
  densityKgPerM3,
  conductivity: [conductivity, 0, 0],
  heatCapacity: [heatCapacity, 0],
});

/** A constant film coefficient of 12 W/(m²·K) and no radiation. */
const FILM: Outside = { emissivity: 0, convectionFactor: 12, convectionExponent: 0 };
const HOT_KELVIN = 1473;
const ROOM_KELVIN = 293;

/** A wall whose hot face is held at a temperature by an all but perfect contact. */
const heldWall = (plan: WallPlan, startKelvin: number) => {
  const wall = new Wall(plan, startKelvin);
  const network = new Network(
    [
      { name: 'hot', startKelvin: HOT_KELVIN, capacityJPerK: Infinity },
      { name: 'face', startKelvin, capacityJPerK: 0 },
      { name: 'room', startKelvin: ROOM_KELVIN, capacityJPerK: Infinity },
    ],
    [{ a: 0, b: 1, wattsPerKelvin: 1e9 }],
    [{ wall, face: 1, room: 2 }],
  );
  return { wall, network };
};

/** Steady loss through the wall, W: steps of hours until nothing changes. */
const steadyWatts = (plan: WallPlan): number => {
  const { wall, network } = heldWall(plan, ROOM_KELVIN);
  for (let step = 0; step < 2000; step++) network.step(3600);
  const before = wall.lostJ;
  network.step(3600);
  return (wall.lostJ - before) / 3600;
};

describe('the wall, steady', () => {
  it('agrees with resistances in series: q = ΔT / Σ(L/kA + 1/hA)', () => {
    // Any heat-transfer text, plane composite wall.
    const layers = [
      { material: plain(0.2), thicknessM: 0.064 },
      { material: plain(0.09), thicknessM: 0.025 },
    ];
    const areaM2 = 1.7;
    const resistance = (0.064 / 0.2 + 0.025 / 0.09 + 1 / 12) / areaM2;
    const watts = steadyWatts({
      layers,
      innerAreaM2: areaM2,
      outerAreaM2: areaM2,
      outside: FILM,
    });
    expect(watts / ((HOT_KELVIN - ROOM_KELVIN) / resistance)).toBeCloseTo(1, 6);
  });

  it('agrees with a hollow cylinder: q = 2πkL·ΔT / ln(r2/r1), plus the film', () => {
    const [innerM, outerM, heightM, k] = [0.3, 0.376, 0.7, 0.2];
    const innerAreaM2 = 2 * Math.PI * innerM * heightM;
    const outerAreaM2 = 2 * Math.PI * outerM * heightM;
    const resistance =
      Math.log(outerM / innerM) / (2 * Math.PI * k * heightM) + 1 / (12 * outerAreaM2);
    const watts = steadyWatts({
      layers: [{ material: plain(k), thicknessM: outerM - innerM }],
      innerAreaM2,
      outerAreaM2,
      outside: FILM,
    });
    expect(watts / ((HOT_KELVIN - ROOM_KELVIN) / resistance)).toBeCloseTo(1, 4);
  });

  it('with conductivity rising with temperature, conducts by its mean over the temperatures', () => {
    // Kirchhoff's transformation: q·L/A = ∫k dT between the faces.
    const [k0, k1, k2] = [0.1, 6e-5, 5e-8];
    const material: Material = { ...plain(0), conductivity: [k0, k1, k2] };
    const { wall, network } = heldWall(
      {
        layers: [{ material, thicknessM: 0.064 }],
        innerAreaM2: 1,
        outerAreaM2: 1,
        outside: FILM,
      },
      ROOM_KELVIN,
    );
    for (let step = 0; step < 2000; step++) network.step(3600);
    const integral = (celsius: number): number =>
      celsius * (k0 + celsius * (k1 / 2 + (celsius * k2) / 3));
    const outer = wall.kelvin.at(-1)!;
    const expected = (integral(HOT_KELVIN - 273.15) - integral(outer - 273.15)) / 0.064;
    expect((12 * (outer - ROOM_KELVIN)) / expected).toBeCloseTo(1, 3);
  });
});

/** Error function, Abramowitz and Stegun 7.1.26 (absolute error below 1.5e-7). */
const erf = (x: number): number => {
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return 1 - series * Math.exp(-x * x);
};

describe('the wall, in time', () => {
  /** Largest departure from the solution for a semi-infinite solid, as a share of the jump. */
  const worstDeparture = (stepSeconds: number, finestCellM: number): number => {
    const [k, density, heatCapacity, seconds] = [0.2, 500, 1000, 1800];
    const { wall, network } = heldWall(
      {
        layers: [{ material: plain(k, density, heatCapacity), thicknessM: 0.4 }],
        innerAreaM2: 1,
        outerAreaM2: 1,
        outside: FILM,
        finestCellM,
        coarsestCellM: finestCellM * 4,
      },
      ROOM_KELVIN,
    );
    for (let at = 0; at < seconds; at += stepSeconds) network.step(stepSeconds);
    const diffusivity = k / (density * heatCapacity);
    let worst = 0;
    wall.depthM.forEach((depthM, i) => {
      const share = 1 - erf(depthM / (2 * Math.sqrt(diffusivity * seconds)));
      const got = (wall.kelvin[i]! - ROOM_KELVIN) / (HOT_KELVIN - ROOM_KELVIN);
      worst = Math.max(worst, Math.abs(got - share));
    });
    return worst;
  };

  it('follows the erf solution for a semi-infinite solid after half an hour', () => {
    // Çengel, transient conduction in semi-infinite solids, case 1 (surface temperature given).
    expect(worstDeparture(5, 0.0015)).toBeLessThan(0.002);
  });

  it('comes closer to it with a finer step and grid', () => {
    const usual = worstDeparture(5, 0.0015);
    const finer = worstDeparture(1.25, 0.00075);
    expect(finer).toBeLessThan(usual / 2);
  });

  it('stores what came in less what went out', () => {
    const plan: WallPlan = {
      layers: [
        { material: LIGHT_BRICK, thicknessM: 0.064 },
        { material: FIBRE_BOARD, thicknessM: 0.025 },
      ],
      innerAreaM2: 1.2,
      outerAreaM2: 1.5,
      outside: FILM,
    };
    const { wall, network } = heldWall(plan, ROOM_KELVIN);
    const before = wall.storedJ();
    for (let step = 0; step < 20_000; step++) network.step(2);
    // Heat drawn from the held node comes out of its account of links as a negative loss.
    const cameIn = -network.lostByLinksJ;
    expect((wall.storedJ() - before) / (cameIn - wall.lostJ)).toBeCloseTo(1, 2);
  });
});

describe('the materials', () => {
  it.each([LIGHT_BRICK, DENSE_BRICK, FIBRE_BOARD, SILICATE_SLAB])(
    '$name conducts within what is usual for insulation up to 1300 °C',
    ({ conductivity: [k0, k1, k2] }) => {
      // Insulating refractories: some 0.04–0.4 W/(m·K) over the range (common practice).
      for (let celsius = 20; celsius <= 1300; celsius += 20) {
        const k = k0 + celsius * (k1 + celsius * k2);
        expect(k).toBeGreaterThan(0.04);
        expect(k).toBeLessThan(0.4);
      }
    },
  );
});
