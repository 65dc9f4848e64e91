/**
 * Loops over long columns, written out: the methods of typed arrays that take a function build
 * lists on the way and are ten times slower on a million rows.
 */

/** The values of some rows; a copy, so that the log does not hold on to the room of the reader. */
export const gather = (values: Float64Array, rows: Uint32Array): Float64Array => {
  // Rows rise, so as many rows as the last one's number are all rows.
  if (rows.length > 0 && rows[rows.length - 1] === rows.length - 1) {
    return values.slice(0, rows.length);
  }
  const gathered = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i += 1) gathered[i] = values[rows[i]!]!;
  return gathered;
};

/** The values without NaN. */
export const present = (values: Float64Array): Float64Array => {
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
