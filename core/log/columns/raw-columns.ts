import type { RejectionId } from '../ids.ts';
import { RowUnits } from './row-units.ts';

/** What became of a row so far: 0 if it was read, else its place in {@link STATES}. */
export const STATES: readonly (RejectionId | 'read')[] = [
  'read',
  'no-reading',
  'no-time',
  'unreadable-time',
  'unreadable-temperature',
  'event',
  'too-few-cells',
  'too-many-cells',
  'half-written',
  'line-too-long',
  'damaged-record',
];

export const READ = 0;
export const stateOf = (reason: RejectionId): number => STATES.indexOf(reason);

const grownFloats = (old: Float64Array, capacity: number): Float64Array => {
  const grown = new Float64Array(capacity);
  grown.set(old);
  return grown;
};

/**
 * The rows of a table as numbers, column by column, before anything is made of them: times as
 * seconds or bare numbers, temperatures in the file's unit. NaN where a cell held no number.
 */
export class RawColumns {
  length = 0;
  time: Float64Array;
  /** The wanted columns: the main temperature first. */
  readonly values: Float64Array[];
  /** 1-based line of each row. */
  line: Uint32Array;
  state: Uint8Array;
  /** The channel of each row of a long table; empty otherwise. */
  series: Uint16Array;
  /** Rows from which on stamps carry another offset, in minutes; null for none. */
  readonly offsets: { row: number; minutes: number | null }[] = [];
  /** Rows whose main temperature has a unit beside the number. */
  readonly units = new RowUnits();
  #capacity: number;

  constructor(wanted: number, capacity: number, hasSeries: boolean) {
    this.#capacity = Math.max(16, capacity);
    this.time = new Float64Array(this.#capacity);
    this.values = Array.from({ length: wanted }, () => new Float64Array(this.#capacity));
    this.line = new Uint32Array(this.#capacity);
    this.state = new Uint8Array(this.#capacity);
    this.series = new Uint16Array(hasSeries ? this.#capacity : 0);
  }

  get capacity(): number {
    return this.#capacity;
  }

  /** Makes room for at least one more row. */
  reserve(): void {
    if (this.length < this.#capacity) return;
    this.#capacity = Math.ceil(this.#capacity * 1.5);
    this.time = grownFloats(this.time, this.#capacity);
    this.values.forEach((column, index) => {
      this.values[index] = grownFloats(column, this.#capacity);
    });
    const line = new Uint32Array(this.#capacity);
    line.set(this.line);
    this.line = line;
    const state = new Uint8Array(this.#capacity);
    state.set(this.state);
    this.state = state;
    if (this.series.length === 0) return;
    const series = new Uint16Array(this.#capacity);
    series.set(this.series);
    this.series = series;
  }

  /** Adds a row that holds nothing yet and returns its index. */
  add(line: number, state: number): number {
    this.reserve();
    const row = this.length;
    this.time[row] = Number.NaN;
    for (const column of this.values) column[row] = Number.NaN;
    this.line[row] = line;
    this.state[row] = state;
    this.length += 1;
    return row;
  }

  /** Notes the offset of the row about to be added, where it differs from the one before. */
  noteOffset(row: number, minutes: number | null): void {
    const last = this.offsets[this.offsets.length - 1];
    if (last?.minutes !== minutes) this.offsets.push({ row, minutes });
  }

  /** The offset printed in a row, in minutes, or null. */
  offsetAt(row: number): number | null {
    return this.offsets.findLast((entry) => entry.row <= row)?.minutes ?? null;
  }

  /** Takes single rows out; `rows` are indices in rising order. */
  remove(rows: readonly number[]): void {
    const gone = new Set(rows);
    let kept = 0;
    for (let row = 0; row < this.length; row += 1) {
      if (gone.has(row)) continue;
      this.time[kept] = this.time[row]!;
      for (const column of this.values) column[kept] = column[row]!;
      this.line[kept] = this.line[row]!;
      this.state[kept] = this.state[row]!;
      if (this.series.length > 0) this.series[kept] = this.series[row]!;
      this.units.move(row, kept);
      kept += 1;
    }
    this.length = kept;
  }

  /** Forgets the rows from `length` on. */
  cutTo(length: number): void {
    this.length = Math.min(this.length, length);
  }
}
