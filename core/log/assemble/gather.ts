/**
 * Loops over long columns, written out: the methods of typed arrays that take a function build
 * lists on the way and are ten times slower on a million rows.
 */

/** Room behind the last row that a column may keep for good, as a share of it (chosen). */
const MOST_SPARE = 1 / 8;

/**
 * The values of some rows, for the caller to keep and change. Where these are all rows, the column
 * itself is handed over instead of a copy, unless it has much room to spare: nobody reads the rest
 * of it again, and a long log needs the memory but once.
 */
export const gather = (values: Float64Array, rows: Uint32Array): Float64Array => {
  // Rows rise, so as many rows as the last one's number are all rows.
  if (rows.length > 0 && rows[rows.length - 1] === rows.length - 1) {
    const room = values.buffer.byteLength / values.BYTES_PER_ELEMENT;
    const isTight = room - rows.length <= MOST_SPARE * room;
    return isTight ? values.subarray(0, rows.length) : values.slice(0, rows.length);
  }
  const gathered = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i += 1) gathered[i] = values[rows[i]!]!;
  return gathered;
};

const hasGaps = (values: Float64Array): boolean => {
  for (let i = 0; i < values.length; i += 1) if (values[i] !== values[i]) return true;
  return false;
};

/** The values without NaN; the same array where there is none. */
export const present = (values: Float64Array): Float64Array => {
  if (!hasGaps(values)) return values;
  const kept = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!;
    if (value === value) {
      kept[count] = value;
      count += 1;
    }
  }
  return kept.subarray(0, count);
};

export interface Extent {
  readonly first: number;
  readonly min: number;
  readonly max: number;
}

/** The first, least and largest of values; NaN is passed over. */
export const extentOf = (values: Float64Array): Extent => {
  let first = Number.NaN;
  let min = Infinity;
  let max = -Infinity;
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!;
    if (value < min) min = value;
    if (value > max) max = value;
    if (first !== first) first = value;
  }
  return { first, min, max };
};
