/**
 * Stuff the test kilns are built of. The figures are from memory and invented within what is usual
 * for such materials; no maker's product is meant. Conductivity is a parabola in °C because that of
 * porous refractories rises faster and faster as radiation takes over in the pores.
 */
export interface Material {
  readonly name: string;
  readonly densityKgPerM3: number;
  /** k = k0 + k1·t + k2·t², W/(m·K) with t in °C. */
  readonly conductivity: readonly [k0: number, k1: number, k2: number];
  /** c = c0 + c1·t, J/(kg·K) with t in °C. */
  readonly heatCapacity: readonly [c0: number, c1: number];
}

/** Light insulating firebrick, of the kind that lines small electric kilns. */
export const LIGHT_BRICK: Material = {
  name: 'light insulating firebrick',
  densityKgPerM3: 510,
  conductivity: [0.098, 5.5e-5, 4.5e-8],
  heatCapacity: [840, 0.26],
};

/** A denser, hotter-rated insulating firebrick. */
export const DENSE_BRICK: Material = {
  name: 'dense insulating firebrick',
  densityKgPerM3: 760,
  conductivity: [0.172, 7.0e-5, 4.0e-8],
  heatCapacity: [850, 0.25],
};

/** Board of ceramic fibre used behind the brick. */
export const FIBRE_BOARD: Material = {
  name: 'fibre board',
  densityKgPerM3: 290,
  conductivity: [0.045, 5.0e-5, 1.1e-7],
  heatCapacity: [880, 0.22],
};

/** Calcium silicate slab used as the outermost insulation. */
export const SILICATE_SLAB: Material = {
  name: 'calcium silicate slab',
  densityKgPerM3: 240,
  conductivity: [0.055, 6.0e-5, 6.0e-8],
  heatCapacity: [900, 0.2],
};
