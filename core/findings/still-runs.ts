import type { Trace } from '../model/trace.ts';

/** Readings in a row that are the same to the last digit. */
export interface StillRun {
  /** Index of the first and of the last of them. */
  readonly first: number;
  readonly last: number;
  readonly celsius: number;
}

type Readings = Pick<Trace, 'atSeconds' | 'celsius'>;

/** All runs of at least `fewest` like readings, in order. */
export const stillRuns = (celsius: Float64Array, fewest: number): StillRun[] => {
  const runs: StillRun[] = [];
  let first = 0;
  for (let i = 1; i <= celsius.length; i++) {
    if (i < celsius.length && celsius[i] === celsius[first]) continue;
    if (i - first >= fewest) runs.push({ first, last: i - 1, celsius: celsius[first]! });
    first = i;
  }
  return runs;
};

/** Readings on either side of a run by which the kiln's own course is told (chosen: odd and few). */
const SIDE_READINGS = 6;
/** A run explained by the kiln's course on both sides leaves a step of at least this share of it. */
const LEFT_BEHIND_SHARE = 0.6;
/** … which stands out of the noise by so many times it, and of the rounding by a step (chosen). */
const SIGMAS = 4;

/** Least-squares slope of some readings, °C/s; NaN for fewer than three. */
const slopeOf = ({ atSeconds, celsius }: Readings, from: number, to: number): number => {
  if (from < 0 || to > celsius.length || to - from < 3) return NaN;
  let time = 0;
  let level = 0;
  for (let i = from; i < to; i++) {
    time += atSeconds[i]! / (to - from);
    level += celsius[i]! / (to - from);
  }
  let across = 0;
  let along = 0;
  for (let i = from; i < to; i++) {
    across += (atSeconds[i]! - time) * (celsius[i]! - level);
    along += (atSeconds[i]! - time) ** 2;
  }
  return across / along;
};

/** A float's own digits are no rounding; readings that show no step are taken to have this one, °C. */
const FINEST_STEP_C = 0.01;
/** Noise of white rounding is at least this share of its step (1/√12). */
const ROUNDING_NOISE = 0.29;
/** One chance in a hundred over the whole record, beside a step that noise does not make (chosen). */
const RARE = 0.01;

/**
 * Whether noise and rounding could well have made a run anywhere in the record while the kiln moved at
 * a rate: two normal readings whose truths are a step d apart fall into the same small interval q with
 * about q / (2σ√π) · exp(−d²/4σ²).
 */
const isChance = (trace: Trace, { first, last }: StillRun, rateCPerSecond: number): boolean => {
  const { noiseC, resolutionC, medianIntervalSeconds, samples } = trace.summary;
  const q = Math.max(resolutionC, FINEST_STEP_C);
  const sigma = Math.max(noiseC, ROUNDING_NOISE * q);
  const stepC = rateCPerSecond * medianIntervalSeconds;
  const same = (q / (2 * sigma * Math.sqrt(Math.PI))) * Math.exp(-(stepC ** 2) / (4 * sigma ** 2));
  return samples * Math.min(1, same) ** (last - first) > RARE;
};

/**
 * Whether the kiln went on behind a run: it moved the same way before and after, and the first
 * reading after the run has made up for what was not shown. A kiln that really held leaves no step.
 */
export const leftBehind = (trace: Trace, run: StillRun): boolean => {
  const { first, last, celsius } = run;
  const { atSeconds, summary } = trace;
  const next = last + 1;
  if (next >= atSeconds.length) return false;
  const before = slopeOf(trace, Math.max(0, first - SIDE_READINGS + 1), first + 1);
  const after = slopeOf(trace, next, Math.min(atSeconds.length, next + SIDE_READINGS));
  if (!(before * after > 0)) return false;
  const rate = Math.sign(before) * Math.min(Math.abs(before), Math.abs(after));
  const missed = rate * (atSeconds[next]! - atSeconds[first]!);
  // A kiln that held may have gone off at the faster of both within the last interval.
  const fastest = Math.sign(rate) * Math.max(Math.abs(before), Math.abs(after));
  const usual = fastest * (atSeconds[next]! - atSeconds[last]!);
  const step = trace.celsius[next]! - celsius;
  const doubtC = SIGMAS * summary.noiseC + summary.resolutionC;
  if (isChance(trace, run, rate)) return false;
  return step / missed >= LEFT_BEHIND_SHARE && (step - usual) * Math.sign(rate) >= doubtC;
};

/** Slower than this a stretch shows how often readings repeat by themselves (chosen). */
const SLOW_C_PER_HOUR = 30;
/** Fewer pairs of readings than this show nothing of it (chosen). */
const FEWEST_PAIRS = 60;
/** A logger whose readings repeat more often than this is too calm to be told from a stuck one. */
const MOST_REPEATS = 0.5;

/** How readings repeat by themselves where the kiln hardly moves. */
export interface Repeating {
  /** Share of pairs of neighbours that are the same; null where too few are seen. */
  readonly share: number | null;
  /** The longest row of like readings, in repeats. */
  readonly longest: number;
}

/** How readings repeat by themselves in a record, one run in question left out. */
export const repeatingBut = (trace: Trace, { first, last }: StillRun): Repeating => {
  let pairs = 0;
  let same = 0;
  let row = 0;
  let longest = 0;
  for (let i = 1; i < trace.celsius.length; i++) {
    const isSame = trace.celsius[i] === trace.celsius[i - 1] && !(i > first && i <= last);
    row = isSame ? row + 1 : 0;
    longest = Math.max(longest, row);
    if (i > first && i <= last) continue;
    if (Math.abs(trace.slopeCPerHour[i]!) > SLOW_C_PER_HOUR) continue;
    pairs++;
    if (isSame) same++;
  }
  return { share: pairs < FEWEST_PAIRS ? null : same / pairs, longest };
};

/** One chance in so many that a living reading does it anywhere in the record (chosen). */
const UNLIKELY = 1e-4;
/** Neighbours are not quite independent: no other row may be half as long (chosen). */
const TIMES_LONGER = 2;

/** Whether a reading that trembles elsewhere would hardly ever repeat so often. */
export const isLifeless = (
  { first, last }: StillRun,
  { share, longest }: Repeating,
  readings: number,
): boolean => {
  if (share === null || share > MOST_REPEATS) return false;
  const repeats = last - first;
  // One repeat is granted even to a logger that never showed one.
  const atLeast = Math.max(share, 1 / Math.max(readings, 2));
  return repeats >= TIMES_LONGER * longest && readings * atLeast ** repeats < UNLIKELY;
};
