/** The first index whose value is not below `value` in an ascending array; its length if none is. */
export const lowerBound = (ascending: ArrayLike<number>, value: number): number => {
  let low = 0;
  let high = ascending.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (ascending[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The index of the last value at or before `value` in an ascending array; -1 if there is none. */
export const lastAtOrBefore = (ascending: ArrayLike<number>, value: number): number => {
  let low = 0;
  let high = ascending.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (ascending[middle]! <= value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
};

/** Linear interpolation of a curve at one moment; the end values hold beyond its ends. */
export const interpolate = (
  atSeconds: ArrayLike<number>,
  values: ArrayLike<number>,
  momentSeconds: number,
): number => {
  const next = lowerBound(atSeconds, momentSeconds);
  if (next === 0) return values[0] ?? NaN;
  if (next >= values.length) return values[values.length - 1]!;
  const fromSeconds = atSeconds[next - 1]!;
  const spanSeconds = atSeconds[next]! - fromSeconds;
  const from = values[next - 1]!;
  if (spanSeconds <= 0) return from;
  return from + ((values[next]! - from) * (momentSeconds - fromSeconds)) / spanSeconds;
};

/** The values at some indices, in their order. */
export const picked = (values: Float64Array, indices: Uint32Array): Float64Array => {
  const result = new Float64Array(indices.length);
  for (let k = 0; k < indices.length; k++) result[k] = values[indices[k]!]!;
  return result;
};
