import { STEFAN_BOLTZMANN } from './physics.ts';
import type { Wall } from './wall.ts';

/** A body at one temperature. */
export interface NodePlan {
  readonly name: string;
  readonly startKelvin: number;
  /**
   * Heat capacity in J/K, constant or at a temperature; 0 for something that has none to speak of
   * (air); Infinity for something whose temperature is given (the room).
   */
  readonly capacityJPerK: number | ((kelvin: number) => number);
}

export type LinkPlan =
  /** Heat in proportion to the temperature difference: convection, contact, carried by air. */
  | { readonly a: number; readonly b: number; readonly wattsPerKelvin: number }
  /** Grey radiation: σ · exchange area · (Ta⁴ − Tb⁴), emissivities and view within the area. */
  | { readonly a: number; readonly b: number; readonly exchangeAreaM2: number };

/** A wall whose hot face is the given node (its own capacity 0) and whose outside sees `room`. */
export interface WallLink {
  readonly wall: Wall;
  readonly face: number;
  readonly room: number;
}

/**
 * Bodies, the ways heat goes between them, and walls with an inside of their own, stepped together
 * by one implicit solve. Radiation enters as the conductance σA(Ta² + Tb²)(Ta + Tb) of the step's
 * beginning; like the wall's properties it is one step late, so the whole is of first order in the
 * step and stable at any. A step of 5–10 s follows a kiln closely; tests halve it to see.
 */
export class Network {
  readonly kelvin: Float64Array;
  /** Power put into each node during the next step, W. */
  readonly watts: Float64Array;
  /** Heat put in as power since the start, J. */
  suppliedJ = 0;
  /** Heat taken up by the nodes of given temperature through links (not through walls), J. */
  lostByLinksJ = 0;

  readonly #capacity: readonly NodePlan['capacityJPerK'][];
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #fixedConductance: Float64Array;
  readonly #exchangeAreaM2: Float64Array;
  readonly #conductance: Float64Array;
  readonly #walls: readonly WallLink[];
  readonly #given: Uint8Array;
  readonly #matrix: Float64Array;
  readonly #right: Float64Array;

  constructor(nodes: readonly NodePlan[], links: readonly LinkPlan[], walls: readonly WallLink[]) {
    this.kelvin = Float64Array.from(nodes, ({ startKelvin }) => startKelvin);
    this.watts = new Float64Array(nodes.length);
    this.#capacity = nodes.map(({ capacityJPerK }) => capacityJPerK);
    this.#given = Uint8Array.from(this.#capacity, (capacity) => (capacity === Infinity ? 1 : 0));
    this.#from = Int32Array.from(links, ({ a }) => a);
    this.#to = Int32Array.from(links, ({ b }) => b);
    this.#fixedConductance = Float64Array.from(links, (link) =>
      'wattsPerKelvin' in link ? link.wattsPerKelvin : 0,
    );
    this.#exchangeAreaM2 = Float64Array.from(links, (link) =>
      'exchangeAreaM2' in link ? link.exchangeAreaM2 : 0,
    );
    this.#conductance = new Float64Array(links.length);
    this.#walls = walls;
    this.#matrix = new Float64Array(nodes.length * nodes.length);
    this.#right = new Float64Array(nodes.length);
  }

  /** Changes a link of the first kind, for what depends on draught or opening. */
  setConductance(link: number, wattsPerKelvin: number): void {
    this.#fixedConductance[link] = wattsPerKelvin;
  }

  step(stepSeconds: number): void {
    this.#assembleNodes(stepSeconds);
    this.#assembleLinks();
    this.#assembleWalls(stepSeconds);
    this.#solve();
    this.#settle(stepSeconds);
  }

  #assembleNodes(stepSeconds: number): void {
    const n = this.kelvin.length;
    this.#matrix.fill(0);
    for (let i = 0; i < n; i++) {
      const now = this.kelvin[i]!;
      if (this.#given[i]) {
        this.#matrix[i * n + i] = 1;
        this.#right[i] = now;
        continue;
      }
      const capacity = this.#capacity[i]!;
      const stored = (typeof capacity === 'number' ? capacity : capacity(now)) / stepSeconds;
      this.#matrix[i * n + i] = stored;
      this.#right[i] = stored * now + this.watts[i]!;
    }
  }

  #assembleLinks(): void {
    for (let link = 0; link < this.#from.length; link++) {
      const a = this.#from[link]!;
      const b = this.#to[link]!;
      const hot = this.kelvin[a]!;
      const cold = this.kelvin[b]!;
      const radiation =
        this.#exchangeAreaM2[link]! * STEFAN_BOLTZMANN * (hot * hot + cold * cold) * (hot + cold);
      const conductance = this.#fixedConductance[link]! + radiation;
      this.#conductance[link] = conductance;
      this.#couple(a, b, conductance);
      this.#couple(b, a, conductance);
    }
  }

  /** Adds `conductance · (T[at] − T[other])` to the balance of `at`. */
  #couple(at: number, other: number, conductance: number): void {
    if (this.#given[at]) return;
    const n = this.kelvin.length;
    this.#matrix[at * n + at]! += conductance;
    if (this.#given[other]) this.#right[at]! += conductance * this.kelvin[other]!;
    else this.#matrix[at * n + other]! -= conductance;
  }

  #assembleWalls(stepSeconds: number): void {
    const n = this.kelvin.length;
    for (const { wall, face, room } of this.#walls) {
      wall.eliminate(stepSeconds, this.kelvin[room]!);
      this.#matrix[face * n + face]! += wall.faceDiagonal;
      this.#right[face]! += wall.faceRight;
    }
  }

  /** Elimination without pivoting: the matrix is symmetric and diagonally dominant. */
  #solve(): void {
    const matrix = this.#matrix;
    const right = this.#right;
    const n = right.length;
    for (let pivot = 0; pivot < n; pivot++) {
      const diagonal = matrix[pivot * n + pivot]!;
      for (let row = pivot + 1; row < n; row++) {
        const factor = matrix[row * n + pivot]! / diagonal;
        if (factor === 0) continue;
        for (let k = pivot + 1; k < n; k++) {
          matrix[row * n + k]! -= factor * matrix[pivot * n + k]!;
        }
        right[row]! -= factor * right[pivot]!;
      }
    }
    for (let row = n - 1; row >= 0; row--) {
      let sum = right[row]!;
      for (let k = row + 1; k < n; k++) sum -= matrix[row * n + k]! * right[k]!;
      right[row] = sum / matrix[row * n + row]!;
    }
  }

  #settle(stepSeconds: number): void {
    this.kelvin.set(this.#right);
    for (const { wall, face } of this.#walls) wall.substitute(stepSeconds, this.kelvin[face]!);
    for (let i = 0; i < this.watts.length; i++) this.suppliedJ += stepSeconds * this.watts[i]!;
    for (let link = 0; link < this.#from.length; link++) {
      const a = this.#from[link]!;
      const b = this.#to[link]!;
      const outwards = (this.#given[b] ? 1 : 0) - (this.#given[a] ? 1 : 0);
      if (outwards === 0) continue;
      this.lostByLinksJ +=
        outwards * stepSeconds * this.#conductance[link]! * (this.kelvin[a]! - this.kelvin[b]!);
    }
  }
}
