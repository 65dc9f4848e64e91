import { ZERO_CELSIUS_IN_KELVIN } from '../units.ts';

/*
 * A kiln as a wall with an inside of its own and a load behind a film of radiation, driven by the
 * temperature that was logged. The wall's heat capacity at 0 °C is the unit of heat capacity, so that
 * powers come out in °C/s of the wall: what a kiln weighs is never asked, and two firings of one kiln
 * have their unit in common whatever the load.
 */

/** What of a kiln stays the same from firing to firing. */
export interface Wall {
  /** Heat capacity over cold conductance, s: how long the wall remembers. */
  readonly memorySeconds: number;
  /** Rise of its conductivity from 0 to 1000 °C, as a share of that at 0 °C. */
  readonly conductivityRise: number;
}

/** What was in it. */
export interface Load {
  /** Heat capacity of ware and shelves over that of the wall. */
  readonly share: number;
  /** Exchange with the chamber by radiation at 1000 °C, over the wall's cold conductance. */
  readonly coupling: number;
}

/** Temperatures of the chamber at steady intervals. */
export interface Driven {
  readonly celsius: Float64Array;
  readonly intervalSeconds: number;
  readonly roomC: number;
}

/** Cells of the wall, each so much thicker than the one before it, the thinnest at the hot face. */
const CELLS = 12;
const CELL_GROWTH = 1.25;
/** Part of the rise in conductivity that is in a straight line, the rest with the square (chosen:
 * porous refractories conduct faster and faster as radiation takes over in their pores). */
const STRAIGHT_RISE = 0.4;
/** Rise of specific heat per °C: refractories and fired clay, usual figures from memory. */
const WALL_HEAT_RISE = 0.3e-3;
const LOAD_HEAT_RISE = 0.4e-3;
/** Film outside over the wall's cold conductance: 12 W/(m²·K) against 2 (chosen, usual figures) … */
const OUTER_FILM = 6;
/** … which rises with the jacket's own warmth, per °C (chosen: radiation and free convection). */
const OUTER_FILM_RISE = 0.004;
const REFERENCE_KELVIN = 1273;

const CELL_SIZES: Float64Array = (() => {
  const sizes = Float64Array.from({ length: CELLS }, (_, i) => CELL_GROWTH ** i);
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  return sizes.map((size) => size / whole);
})();

const conductivityAt = (rise: number, celsius: number): number => {
  const share = celsius / 1000;
  return 1 + rise * share * (STRAIGHT_RISE + (1 - STRAIGHT_RISE) * share);
};

/**
 * Heat that flows into a slab whose hot face has a given temperature, interval by interval: implicit
 * steps of one-dimensional conduction, properties as they were at the interval's beginning.
 */
class Slab {
  readonly #wall: Wall;
  readonly #roomC: number;
  readonly #celsius: Float64Array;
  readonly #capacity = new Float64Array(CELLS + 1);
  readonly #conductance = new Float64Array(CELLS);
  readonly #diagonal = new Float64Array(CELLS + 1);
  readonly #right = new Float64Array(CELLS + 1);

  constructor(wall: Wall, roomC: number, startC: number) {
    this.#wall = wall;
    this.#roomC = roomC;
    this.#celsius = new Float64Array(CELLS + 1).fill(startC);
    CELL_SIZES.forEach((size, i) => {
      this.#capacity[i]! += size / 2;
      this.#capacity[i + 1]! += size / 2;
    });
  }

  /** Steps to a new temperature of the face; heat taken up per second, in °C/s of the wall. */
  step(faceC: number, intervalSeconds: number): number {
    const celsius = this.#celsius;
    const conductance = this.#conductance;
    const cold = 1 / this.#wall.memorySeconds;
    for (let i = 0; i < CELLS; i++) {
      const middleC = (celsius[i]! + celsius[i + 1]!) / 2;
      conductance[i] =
        (cold * conductivityAt(this.#wall.conductivityRise, middleC)) / CELL_SIZES[i]!;
    }
    const stored = (i: number) =>
      (this.#capacity[i]! * (1 + WALL_HEAT_RISE * celsius[i]!)) / intervalSeconds;
    let beyond = cold * OUTER_FILM * (1 + OUTER_FILM_RISE * (celsius[CELLS]! - this.#roomC));
    let inflow = beyond * this.#roomC;
    for (let i = CELLS; i > 0; i--) {
      const before = conductance[i - 1]!;
      this.#diagonal[i] = stored(i) + before + beyond;
      this.#right[i] = stored(i) * celsius[i]! + inflow;
      inflow = (before * this.#right[i]!) / this.#diagonal[i]!;
      beyond = before * (1 - before / this.#diagonal[i]!);
    }
    const taken = stored(0) * (faceC - celsius[0]!) + beyond * faceC - inflow;
    celsius[0] = faceC;
    for (let i = 1; i <= CELLS; i++) {
      celsius[i] = (this.#right[i]! + conductance[i - 1]! * celsius[i - 1]!) / this.#diagonal[i]!;
    }
    return taken;
  }
}

/**
 * The power that a kiln must have had to run through the temperatures it did, interval by interval,
 * in °C/s of the wall; the first is 0. It starts at rest throughout at the first temperature.
 */
export const requiredPower = (driven: Driven, wall: Wall, load: Load): Float64Array => {
  const { celsius, intervalSeconds, roomC } = driven;
  const slab = new Slab(wall, roomC, celsius[0]!);
  const film = load.coupling / wall.memorySeconds / (4 * REFERENCE_KELVIN ** 3);
  const power = new Float64Array(celsius.length);
  let loadC = celsius[0]!;
  for (let i = 1; i < celsius.length; i++) {
    const faceC = celsius[i]!;
    const faceK = faceC + ZERO_CELSIUS_IN_KELVIN;
    const loadK = loadC + ZERO_CELSIUS_IN_KELVIN;
    const exchange = film * (faceK * faceK + loadK * loadK) * (faceK + loadK);
    const stored = (load.share * (1 + LOAD_HEAT_RISE * loadC)) / intervalSeconds;
    loadC = (stored * loadC + exchange * faceC) / (stored + exchange);
    power[i] = slab.step(faceC, intervalSeconds) + exchange * (faceC - loadC);
  }
  return power;
};

/** ∫ of the relative conductivity over temperature (Kirchhoff's transformation), °C. */
const transformed = (rise: number, celsius: number): number => {
  const share = celsius / 1000;
  const bent = (STRAIGHT_RISE * share) / 2 + ((1 - STRAIGHT_RISE) * share * share) / 3;
  return celsius * (1 + rise * bent);
};

/** What a wall soaked through at a temperature loses, in °C/s of the wall. */
export const steadyLoss = (wall: Wall, faceC: number, roomC: number): number => {
  const through = (outsideC: number) =>
    transformed(wall.conductivityRise, faceC) - transformed(wall.conductivityRise, outsideC);
  const away = (outsideC: number) =>
    OUTER_FILM * (1 + OUTER_FILM_RISE * (outsideC - roomC)) * (outsideC - roomC);
  let [low, high] = [roomC, faceC];
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (away(middle) < through(middle)) low = middle;
    else high = middle;
  }
  return away((low + high) / 2) / wall.memorySeconds;
};
