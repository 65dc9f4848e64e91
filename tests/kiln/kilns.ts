import type { ChamberPlan, KilnPlan } from './kiln.ts';
import { DENSE_BRICK, FIBRE_BOARD, LIGHT_BRICK, SILICATE_SLAB } from './materials.ts';
import type { WallLayer, WallPlan } from './wall.ts';
import { STEEL_JACKET } from './wall.ts';

/** A round chamber's walls: sides as a cylinder, floor and lid as discs. */
const roundWalls = (
  radiusM: number,
  heightM: number,
  sideLayers: readonly WallLayer[],
  endLayers: readonly WallLayer[],
): { sides: WallPlan; ends: WallPlan } => {
  const thickness = (layers: readonly WallLayer[]): number =>
    layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
  const outerRadiusM = radiusM + thickness(sideLayers);
  return {
    sides: {
      layers: sideLayers,
      innerAreaM2: 2 * Math.PI * radiusM * heightM,
      outerAreaM2: 2 * Math.PI * outerRadiusM * heightM,
      outside: STEEL_JACKET,
    },
    ends: {
      layers: endLayers,
      innerAreaM2: 2 * Math.PI * radiusM ** 2,
      outerAreaM2: 2 * Math.PI * outerRadiusM ** 2,
      outside: STEEL_JACKET,
    },
  };
};

/** The inside of a middling chamber, 0.19 m³; the others are scaled from it. */
const MIDDLING: ChamberPlan = {
  heightM: 0.69,
  elementsToSidesM2: 0.34,
  elementsToEndsM2: 0.05,
  elementsToWareM2: 0.2,
  sidesToEndsM2: 0.32,
  sidesToSidesM2: 0.05,
  sidesToWareM2: 0.75,
  endsToWareM2: 0.3,
  wareToWareM2: 0.02,
  convectionWPerM2K: 9,
  elementsAreaM2: 0.55,
  wareAreaM2: 2.2,
  lidGapM2: 2.5e-4,
  spyHoleM2: 2.5e-4,
  bridgeWPerK: 0.35,
};

const scaled = (factor: number, heightM: number): ChamberPlan => {
  const grown = (Object.entries(MIDDLING) as [keyof ChamberPlan, number][]).map(([name, value]) => [
    name,
    name.endsWith('M2') ? value * factor : value,
  ]);
  return { ...(Object.fromEntries(grown) as ChamberPlan), heightM };
};

/** 2½-inch light brick, three circuits: quick to heat, leaks a good deal. */
export const THIN_BRICK: KilnPlan = {
  name: 'thin brick',
  ...roundWalls(
    0.29,
    0.69,
    [{ material: LIGHT_BRICK, thicknessM: 0.0635 }],
    [{ material: LIGHT_BRICK, thicknessM: 0.0635 }],
  ),
  elements: { ratedWatts: 11_000, ratedVolts: 240, circuits: 3, upperShare: 0.56, massKg: 5.5 },
  chamber: MIDDLING,
  furnitureKg: 16,
};

/** 3-inch dense brick with a slab behind, six circuits: heavy walls with a long memory. */
export const THICK_BRICK: KilnPlan = {
  name: 'thick brick',
  ...roundWalls(
    0.32,
    0.72,
    [
      { material: DENSE_BRICK, thicknessM: 0.0762 },
      { material: SILICATE_SLAB, thicknessM: 0.0125 },
    ],
    [{ material: LIGHT_BRICK, thicknessM: 0.0762 }],
  ),
  elements: { ratedWatts: 14_500, ratedVolts: 240, circuits: 6, upperShare: 0.51, massKg: 8 },
  chamber: scaled(1.15, 0.72),
  furnitureKg: 20,
};

/** 2½-inch light brick backed with fibre board, four circuits: tight and slow to cool. */
export const BACKED_BRICK: KilnPlan = {
  name: 'backed brick',
  ...roundWalls(
    0.28,
    0.66,
    [
      { material: LIGHT_BRICK, thicknessM: 0.0635 },
      { material: FIBRE_BOARD, thicknessM: 0.025 },
    ],
    [
      { material: LIGHT_BRICK, thicknessM: 0.0635 },
      { material: FIBRE_BOARD, thicknessM: 0.05 },
    ],
  ),
  elements: { ratedWatts: 9_000, ratedVolts: 230, circuits: 4, upperShare: 0.45, massKg: 5 },
  chamber: scaled(0.92, 0.66),
  furnitureKg: 14,
};

export const KILNS: readonly KilnPlan[] = [THIN_BRICK, THICK_BRICK, BACKED_BRICK];
