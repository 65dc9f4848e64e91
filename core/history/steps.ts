/** A sudden change of level in a series that may also drift. */
export interface LevelStep {
  /** Place in the series of the first value after it. */
  readonly at: number;
  /** How much higher the values after it are, in units of the series. */
  readonly height: number;
}

/** Fewer values on either side of a step could be one odd load (chosen). */
const FEWEST_EACH_SIDE = 2;
/** Level, drift and step are three unknowns: fewer values than this fit anything (chosen). */
const FEWEST = 6;
/** A step stands out of the scatter by so many standard errors (chosen: any of many places may win). */
const ERRORS = 4;

export interface StepLimits {
  /** Smaller steps are not told. */
  readonly least: number;
  /** The scatter is never taken to be less than this. */
  readonly leastScatter: number;
}

/** What is left of a column when level and drift over x are taken out. */
const detrended = (x: readonly number[], y: readonly number[]): number[] => {
  const n = x.length;
  const meanX = x.reduce((sum, value) => sum + value, 0) / n;
  const meanY = y.reduce((sum, value) => sum + value, 0) / n;
  let along = 0;
  let across = 0;
  x.forEach((value, i) => {
    along += (value - meanX) ** 2;
    across += (value - meanX) * (y[i]! - meanY);
  });
  const slope = along > 0 ? across / along : 0;
  return y.map((value, i) => value - meanY - slope * (x[i]! - meanX));
};

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/**
 * The step at one place by least squares, level and drift fitted with it: after both are taken out of
 * series and step alike, what is left is a regression on one column (Frisch and Waugh, Econometrica 1
 * (1933) 387).
 */
const stepAt = (x: readonly number[], rest: readonly number[], at: number) => {
  const column = detrended(
    x,
    x.map((_, i) => (i < at ? 0 : 1)),
  );
  const weight = dot(column, column);
  const height = weight > 1e-9 ? dot(column, rest) / weight : 0;
  const squares = dot(rest, rest) - height ** 2 * weight;
  return { at, height, squares, weight };
};

/** Values on either side of a rise that are held against each other (chosen: the nearest few). */
const NEARBY = 4;

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Whether the values right after a place stand above those right before it. Drift is left out: wear
 * only falls, so that it hides a rise and never makes one.
 */
const rises = (y: readonly number[], at: number, least: number, scatter: number): boolean => {
  const before = y.slice(Math.max(0, at - NEARBY), at);
  const after = y.slice(at, at + NEARBY);
  const error = scatter * Math.sqrt(1 / before.length + 1 / after.length);
  return meanOf(after) - meanOf(before) >= Math.max(least, ERRORS * error);
};

/** The most convincing step of a series, if one is convincing. */
const bestStep = (
  x: readonly number[],
  y: readonly number[],
  { least, leastScatter }: StepLimits,
): LevelStep | null => {
  if (x.length < FEWEST) return null;
  const rest = detrended(x, y);
  let best: ReturnType<typeof stepAt> | null = null;
  for (let at = FEWEST_EACH_SIDE; at <= x.length - FEWEST_EACH_SIDE; at++) {
    const step = stepAt(x, rest, at);
    if (best === null || step.squares < best.squares) best = step;
  }
  if (best === null || best.weight <= 1e-9) return null;
  const scatter = Math.max(leastScatter, Math.sqrt(Math.max(0, best.squares) / (x.length - 3)));
  const error = scatter / Math.sqrt(best.weight);
  const isSure = Math.abs(best.height) >= Math.max(least, ERRORS * error);
  return isSure || (best.height > 0 && rises(y, best.at, least, scatter))
    ? { at: best.at, height: best.height }
    : null;
};

/** All steps of a series over ascending x, by splitting it at the most convincing one and again. */
export const findSteps = (
  x: readonly number[],
  y: readonly number[],
  limits: StepLimits,
): LevelStep[] => {
  const step = bestStep(x, y, limits);
  if (step === null) return [];
  const before = findSteps(x.slice(0, step.at), y.slice(0, step.at), limits);
  const after = findSteps(x.slice(step.at), y.slice(step.at), limits);
  return [...before, step, ...after.map((later) => ({ ...later, at: later.at + step.at }))];
};
