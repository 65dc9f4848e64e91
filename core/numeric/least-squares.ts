/** A minimum of a sum of squares, with what the squares say of each parameter's certainty. */
export interface LeastSquares {
  readonly parameters: readonly number[];
  /** Inverse of JᵀJ at the minimum: the covariance where residuals have a standard deviation of 1. */
  readonly covariance: readonly (readonly number[])[];
  /** Sum of the squared residuals. */
  readonly squares: number;
}

type Residuals = (parameters: readonly number[]) => ArrayLike<number>;
type Matrix = readonly (readonly number[])[];

/** Forward differences: far above rounding, far below what parameters of order 1 mean (chosen). */
const DIFFERENCE = 1e-4;
const MOST_ITERATIONS = 40;
const MOST_DAMPINGS = 8;
/** A step that gains less than this share of the squares is the last (chosen). */
const LEAST_GAIN = 1e-8;
const FIRST_DAMPING = 1e-2;
const LEAST_DAMPING = 1e-9;
const DAMPING_FACTOR = 5;

/** The solution of A·x = b by elimination with row pivoting; non-finite where A is singular. */
export const solveLinear = (matrix: Matrix, right: readonly number[]): number[] => {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i + 1; k < n; k++) {
      if (Math.abs(rows[k]![i]!) > Math.abs(rows[pivot]![i]!)) pivot = k;
    }
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    for (let k = i + 1; k < n; k++) {
      const factor = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= n; j++) rows[k]![j]! -= factor * rows[i]![j]!;
    }
  }
  const solution = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= rows[i]![j]! * solution[j]!;
    solution[i] = sum / rows[i]![i]!;
  }
  return solution;
};

const inverse = (matrix: Matrix): number[][] => {
  const columns = matrix.map((_, k) =>
    solveLinear(
      matrix,
      matrix.map((_row, i) => (i === k ? 1 : 0)),
    ),
  );
  return matrix.map((_, i) => columns.map((column) => column[i]!));
};

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};

const jacobian = (
  residuals: Residuals,
  at: readonly number[],
  here: ArrayLike<number>,
): Float64Array[] =>
  at.map((value, k) => {
    const step = DIFFERENCE * Math.max(1, Math.abs(value));
    const there = residuals(at.with(k, value + step));
    return Float64Array.from(there, (residual, i) => (residual - here[i]!) / step);
  });

/**
 * The parameters that make the sum of squared residuals least, by damped Gauss–Newton steps
 * (Levenberg 1944; Marquardt, J. SIAM 11 (1963) 431), from a start near enough. Parameters should be
 * of order 1: take logarithms of what is positive. Prior knowledge goes in as further residuals.
 */
export const leastSquares = (residuals: Residuals, start: readonly number[]): LeastSquares => {
  let parameters = [...start];
  let here = residuals(parameters);
  let squares = dot(here, here);
  let damping = FIRST_DAMPING;
  let normal: number[][] = [];
  for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
    const columns = jacobian(residuals, parameters, here);
    normal = columns.map((a) => columns.map((b) => dot(a, b)));
    const downhill = columns.map((column) => -dot(column, here));
    let gain = 0;
    for (let trial = 0; trial < MOST_DAMPINGS && gain === 0; trial++) {
      const damped = normal.map((row, i) => row.with(i, row[i]! * (1 + damping)));
      const step = solveLinear(damped, downhill);
      const next = parameters.map((value, i) => value + step[i]!);
      const there = residuals(next);
      const left = dot(there, there);
      if (left < squares) {
        gain = (squares - left) / squares;
        [parameters, here, squares] = [next, there, left];
        damping = Math.max(damping / DAMPING_FACTOR, LEAST_DAMPING);
      } else damping *= DAMPING_FACTOR;
    }
    if (gain <= LEAST_GAIN) break;
  }
  return { parameters, covariance: inverse(normal), squares };
};
