import type { ChannelUnit } from '../../model/options.ts';

/** Numbers that stand for the units, 0 for none; their order means nothing. */
const UNITS: readonly ChannelUnit[] = ['C', 'F', 'K', 'mV', 'uV'];

/** The units that stand beside the readings of single rows: a byte a row, once there is one. */
export class RowUnits {
  #codes = new Uint8Array(0);
  readonly #counts = new Map<ChannelUnit, number>();

  /** How many rows have each unit. */
  get counts(): ReadonlyMap<ChannelUnit, number> {
    return this.#counts;
  }

  /** Notes the unit of a row that has none yet; `capacity` is the room that rows have by now. */
  note(row: number, unit: ChannelUnit, capacity: number): void {
    if (row >= this.#codes.length) {
      const grown = new Uint8Array(Math.max(row + 1, capacity));
      grown.set(this.#codes);
      this.#codes = grown;
    }
    this.#codes[row] = UNITS.indexOf(unit) + 1;
    this.#counts.set(unit, (this.#counts.get(unit) ?? 0) + 1);
  }

  /** The unit beside a row's reading, or undefined. */
  of(row: number): ChannelUnit | undefined {
    return UNITS[(this.#codes[row] ?? 0) - 1];
  }

  /** Moves what is noted for one row to another, before it, that is given up. */
  move(from: number, to: number): void {
    if (to < this.#codes.length) this.#codes[to] = this.#codes[from] ?? 0;
  }
}
