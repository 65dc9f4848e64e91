/** Rows over which a programme is compared with a straight line. */
const WINDOW_ROWS = 9;
/** A programme runs straight in at least this share of its windows … (chosen) */
const PROGRAMME_STRAIGHT = 0.85;
/** … and a measured column in at most this share (chosen). */
const MEASURED_STRAIGHT = 0.5;
const FEWEST_WINDOWS = 6;
const MOST_DECIMALS = 4;

/** The step of the last printed decimal. */
const printedStep = (values: Float64Array): number => {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals += 1) {
    const scale = 10 ** decimals;
    const isEnough = values.every(
      (value) => Math.abs(value * scale - Math.round(value * scale)) < 1e-6 * scale,
    );
    if (isEnough) return 1 / scale;
  }
  return 10 ** -MOST_DECIMALS;
};

const isStraight = (values: Float64Array, from: number, within: number): boolean => {
  const last = from + WINDOW_ROWS - 1;
  const slope = (values[last]! - values[from]!) / (WINDOW_ROWS - 1);
  for (let i = from + 1; i < last; i += 1) {
    if (Math.abs(values[i]! - (values[from]! + slope * (i - from))) > within) return false;
  }
  return true;
};

/** Share of windows that run straight to within the printed step; NaN if there are too few. */
const straightShare = (values: Float64Array): number => {
  const within = 1.01 * printedStep(values);
  let windows = 0;
  let straight = 0;
  for (let from = 0; from + WINDOW_ROWS <= values.length; from += WINDOW_ROWS - 1) {
    windows += 1;
    if (isStraight(values, from, within)) straight += 1;
  }
  return windows < FEWEST_WINDOWS ? Number.NaN : straight / windows;
};

const spread = (values: Float64Array): number => {
  let min = Infinity;
  let max = -Infinity;
  for (const value of values) {
    min = Math.min(min, value);
    max = Math.max(max, value);
  }
  return max - min;
};

/**
 * Whether one column runs as a programme does, in exact straight pieces, beside another that is
 * measured: it wavers where the first does not, and they keep close together.
 */
export const isProgrammeBeside = (programme: Float64Array, measured: Float64Array): boolean => {
  const both = programme
    .map((value, row) => value + measured[row]!)
    .reduce((count, sum) => count + (Number.isNaN(sum) ? 0 : 1), 0);
  if (both < programme.length * 0.9 || spread(programme) === 0) return false;
  const pairs = [...programme.keys()].filter(
    (row) => !Number.isNaN(programme[row]! + measured[row]!),
  );
  const asked = Float64Array.from(pairs, (row) => programme[row]!);
  const read = Float64Array.from(pairs, (row) => measured[row]!);
  const isClose = meanGap(asked, read) < 0.2 * Math.max(spread(read), spread(asked));
  return (
    isClose &&
    straightShare(asked) >= PROGRAMME_STRAIGHT &&
    straightShare(read) <= MEASURED_STRAIGHT
  );
};

const meanGap = (one: Float64Array, other: Float64Array): number =>
  one.reduce((sum, value, row) => sum + Math.abs(value - other[row]!), 0) / Math.max(1, one.length);
