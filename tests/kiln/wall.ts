import type { Material } from './materials.ts';
import { STEFAN_BOLTZMANN, ZERO_CELSIUS_KELVIN } from './physics.ts';

export interface WallLayer {
  readonly material: Material;
  readonly thicknessM: number;
}

/** How the outside of a wall gives its heat to the room. */
export interface Outside {
  readonly emissivity: number;
  /** Free convection h = factor · ΔT^exponent, W/(m²·K). */
  readonly convectionFactor: number;
  readonly convectionExponent: number;
}

export interface WallPlan {
  /** From the hot face outwards. */
  readonly layers: readonly WallLayer[];
  readonly innerAreaM2: number;
  /** The area grows in proportion to depth, as it does round a cylinder. */
  readonly outerAreaM2: number;
  readonly outside: Outside;
  /** Cell beside the hot face, m; each further cell is up to a quarter larger. */
  readonly finestCellM?: number;
  readonly coarsestCellM?: number;
}

/**
 * Turbulent free convection on a vertical plate in room air, h = 1.31·ΔT^(1/3) (Holman, Heat
 * Transfer, table of simplified equations for free convection in air; from memory), and a dull
 * steel jacket's emissivity (chosen).
 */
export const STEEL_JACKET: Outside = {
  emissivity: 0.7,
  convectionFactor: 1.31,
  convectionExponent: 1 / 3,
};

const FINEST_CELL_M = 0.0015;
const COARSEST_CELL_M = 0.006;
const CELL_GROWTH = 1.25;

/** Cells of each layer: fine at the hot face, coarser outwards, and always whole within a layer. */
const cellsOf = (plan: WallPlan): { sizeM: number; material: Material }[] => {
  const coarsestM = plan.coarsestCellM ?? COARSEST_CELL_M;
  let nextM = plan.finestCellM ?? FINEST_CELL_M;
  return plan.layers.flatMap(({ material, thicknessM }) => {
    const sizesM: number[] = [];
    let filledM = 0;
    while (filledM < thicknessM * (1 - 1e-9)) {
      sizesM.push(nextM);
      filledM += nextM;
      nextM = Math.min(nextM * CELL_GROWTH, coarsestM);
    }
    return sizesM.map((sizeM) => ({ sizeM: (sizeM * thicknessM) / filledM, material }));
  });
};

/**
 * One-dimensional conduction through a layered wall whose conductivity and heat capacity depend on
 * temperature. Nodes stand at the cells' borders, so that every conductance lies within one material
 * and the outermost nodes are the two faces.
 *
 * Time is stepped by the fully implicit (backward Euler) scheme with properties taken at the
 * beginning of the step: unconditionally stable, error of first order in the step. The tridiagonal
 * system is swept from the outside to the hot face ({@link Wall.eliminate}), where the chamber's own
 * equations join it, and back ({@link Wall.substitute}).
 */
export class Wall {
  readonly kelvin: Float64Array;
  /** Depth of each node below the hot face, m. */
  readonly depthM: Float64Array;
  /** After {@link eliminate}: what the wall adds to the hot face's diagonal and right-hand side. */
  faceDiagonal = 0;
  faceRight = 0;
  /** Heat given to the room through the outside since the start, J. */
  lostJ = 0;

  readonly #cells: { sizeM: number; material: Material }[];
  readonly #plan: WallPlan;
  readonly #k0: Float64Array;
  readonly #k1: Float64Array;
  readonly #k2: Float64Array;
  /** Area over length of each cell, m. */
  readonly #shapeM: Float64Array;
  /** Heat capacity of each node at 0 °C, J/K, and its rise per °C. */
  readonly #c0: Float64Array;
  readonly #c1: Float64Array;
  readonly #conductance: Float64Array;
  readonly #diagonal: Float64Array;
  readonly #right: Float64Array;
  #outsideConductance = 0;
  #roomKelvin = 0;

  constructor(plan: WallPlan, startKelvin: number) {
    const cells = cellsOf(plan);
    const nodes = cells.length + 1;
    this.#plan = plan;
    this.#cells = cells;
    this.kelvin = new Float64Array(nodes).fill(startKelvin);
    this.depthM = new Float64Array(nodes);
    cells.forEach(({ sizeM }, i) => (this.depthM[i + 1] = this.depthM[i]! + sizeM));
    this.#k0 = Float64Array.from(cells, ({ material }) => material.conductivity[0]);
    this.#k1 = Float64Array.from(cells, ({ material }) => material.conductivity[1]);
    this.#k2 = Float64Array.from(cells, ({ material }) => material.conductivity[2]);
    this.#shapeM = Float64Array.from(
      cells,
      ({ sizeM }, i) => this.#areaAt(this.depthM[i]! + sizeM / 2) / sizeM,
    );
    this.#c0 = this.#nodeCapacity(0);
    this.#c1 = this.#nodeCapacity(1);
    this.#conductance = new Float64Array(cells.length);
    this.#diagonal = new Float64Array(nodes);
    this.#right = new Float64Array(nodes);
  }

  #areaAt(depthM: number): number {
    const { innerAreaM2, outerAreaM2 } = this.#plan;
    const thicknessM = this.depthM.at(-1)!;
    return innerAreaM2 + ((outerAreaM2 - innerAreaM2) * depthM) / thicknessM;
  }

  /** Each node owns the halves of its two cells. */
  #nodeCapacity(coefficient: 0 | 1): Float64Array {
    const capacity = new Float64Array(this.kelvin.length);
    this.#cells.forEach(({ sizeM, material }, i) => {
      const perM3 = material.densityKgPerM3 * material.heatCapacity[coefficient];
      capacity[i]! += perM3 * (sizeM / 2) * this.#areaAt(this.depthM[i]! + sizeM / 4);
      capacity[i + 1]! += perM3 * (sizeM / 2) * this.#areaAt(this.depthM[i]! + (sizeM * 3) / 4);
    });
    return capacity;
  }

  /** Conductance from the outside to the room, W/K, with both temperatures as they are now. */
  #toRoom(roomKelvin: number): number {
    const { emissivity, convectionFactor, convectionExponent } = this.#plan.outside;
    const outer = this.kelvin[this.kelvin.length - 1]!;
    const difference = Math.abs(outer - roomKelvin);
    const convection =
      convectionExponent === 1 / 3
        ? convectionFactor * Math.cbrt(difference)
        : convectionFactor * Math.pow(difference, convectionExponent);
    const radiation =
      emissivity *
      STEFAN_BOLTZMANN *
      (outer * outer + roomKelvin * roomKelvin) *
      (outer + roomKelvin);
    return this.#plan.outerAreaM2 * (convection + radiation);
  }

  /** First half of a step: sweeps the wall into the two numbers that its hot face needs. */
  eliminate(stepSeconds: number, roomKelvin: number): void {
    const { kelvin } = this;
    const last = kelvin.length - 1;
    const diagonal = this.#diagonal;
    const right = this.#right;
    const conductance = this.#conductance;
    for (let i = 0; i < last; i++) {
      const middle = (kelvin[i]! + kelvin[i + 1]!) / 2 - ZERO_CELSIUS_KELVIN;
      conductance[i] =
        this.#shapeM[i]! * (this.#k0[i]! + middle * (this.#k1[i]! + middle * this.#k2[i]!));
    }
    this.#outsideConductance = this.#toRoom(roomKelvin);
    this.#roomKelvin = roomKelvin;
    let beyond = this.#outsideConductance;
    let inflow = beyond * roomKelvin;
    for (let i = last; i >= 0; i--) {
      const now = kelvin[i]!;
      const stored = (this.#c0[i]! + this.#c1[i]! * (now - ZERO_CELSIUS_KELVIN)) / stepSeconds;
      const before = i > 0 ? conductance[i - 1]! : 0;
      diagonal[i] = stored + before + beyond;
      right[i] = stored * now + inflow;
      // What this node looks like from the next one inwards, once it is eliminated.
      beyond = before * (1 - before / diagonal[i]!);
      inflow = (before * right[i]!) / diagonal[i]!;
    }
    this.faceDiagonal = diagonal[0]!;
    this.faceRight = right[0]!;
  }

  /** Second half of a step: the hot face's new temperature is known, so is all behind it. */
  substitute(stepSeconds: number, faceKelvin: number): void {
    const { kelvin } = this;
    kelvin[0] = faceKelvin;
    for (let i = 1; i < kelvin.length; i++) {
      kelvin[i] =
        (this.#right[i]! + this.#conductance[i - 1]! * kelvin[i - 1]!) / this.#diagonal[i]!;
    }
    this.lostJ +=
      stepSeconds * this.#outsideConductance * (kelvin[kelvin.length - 1]! - this.#roomKelvin);
  }

  /** Heat stored above 0 °C, J: the exact integral of each node's heat capacity. */
  storedJ(): number {
    let total = 0;
    for (let i = 0; i < this.kelvin.length; i++) {
      const celsius = this.kelvin[i]! - ZERO_CELSIUS_KELVIN;
      total += celsius * (this.#c0[i]! + (this.#c1[i]! * celsius) / 2);
    }
    return total;
  }
}
