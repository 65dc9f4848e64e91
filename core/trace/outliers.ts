import type { RemovedSample, Repair } from '../model/trace.ts';
import { celsiusDelta, seconds, type CelsiusDelta } from '../units.ts';
import { median } from '../numeric/statistics.ts';

/** Nothing on Earth that a couple could report lies outside (absolute zero; tungsten couples). */
const POSSIBLE_C = { from: -273.15, to: 3000 } as const;
/** A spike stands out by at least this much (chosen: above any rounding or relay ripple). */
const SPIKE_C = 8;
/** … and by at least this many times the noise. */
const SPIKE_SIGMAS = 8;
/** A spike is at most this many samples long. */
const SPIKE_SAMPLES = 3;
/**
 * No kiln's temperature moves faster than this, lid open included (chosen; a fast fibre kiln climbs
 * some 30 °C/min). A faster step that comes back again is the couple, not the kiln.
 */
const FASTEST_KILN_C_PER_SECOND = 40 / 60;
/** What a kiln may have moved behind readings that were taken out (chosen: 720 °C/h). */
const UNSEEN_C_PER_SECOND = 12 / 60;
/** A dropout that lasts longer than this is not taken out in silence (chosen). */
const LONGEST_DROPOUT_SECONDS = 3600;
/** Readings taken further apart than this are too coarse to tell a spike from a course. */
const COARSEST_INTERVAL_SECONDS = 300;
const FEWEST_SAMPLES = 20;

/** A run of samples that does not belong to the kiln's course. */
interface Outlier {
  readonly from: number;
  readonly to: number;
  readonly kind: 'spike' | 'dropout';
}

const around = (celsius: Float64Array, from: number, to: number): number =>
  median(celsius.subarray(Math.max(0, from), Math.min(celsius.length, to)));

/**
 * The short run starting at `i` that leaves the course on either side of it, if there is one;
 * `leftC` is the course before it.
 */
const spikeAt = (
  celsius: Float64Array,
  i: number,
  leftC: number,
  thresholdC: number,
): Outlier | null => {
  // The longest run first: what is left of a spike cut short would pass for the course.
  for (let to = Math.min(i + SPIKE_SAMPLES, celsius.length - 1); to > i; to--) {
    const right = around(celsius, to, to + 3);
    const between = (leftC + right) / 2;
    const needed = thresholdC + 1.5 * Math.abs(right - leftC);
    const sign = Math.sign(celsius[i]! - between);
    let isOut = true;
    for (let k = i; k < to; k++) isOut &&= sign * (celsius[k]! - between) > needed;
    if (isOut) return { from: i, to, kind: sign > 0 ? 'spike' : 'dropout' };
  }
  return null;
};

/**
 * The longer run starting at `i` with an impossibly fast step in, from the good reading `last`, and
 * a matching one back.
 */
const dropoutAt = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  last: number,
  i: number,
  thresholdC: number,
): Outlier | null => {
  const stepLimit = (from: number, to: number) =>
    Math.max(thresholdC, FASTEST_KILN_C_PER_SECOND * (atSeconds[to]! - atSeconds[from]!));
  const before = celsius[last]!;
  const step = celsius[i]! - before;
  if (Math.abs(step) <= stepLimit(last, i)) return null;
  for (let to = i + 1; to < celsius.length; to++) {
    const lasted = atSeconds[to]! - atSeconds[i]!;
    if (lasted > LONGEST_DROPOUT_SECONDS) return null;
    const back = celsius[to]! - celsius[to - 1]!;
    const isReturn = Math.sign(back) === -Math.sign(step) && Math.abs(back) > stepLimit(to - 1, to);
    const isHome = Math.abs(celsius[to]! - before) < 0.5 * Math.abs(step);
    if (isReturn && isHome) return { from: i, to, kind: step > 0 ? 'spike' : 'dropout' };
  }
  return null;
};

const findOutliers = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  thresholdC: number,
): Outlier[] => {
  const outliers: Outlier[] = [];
  // The last good reading, and the one before which nothing was taken out since.
  let last = 0;
  let good = 0;
  for (let i = 1; i + 1 < celsius.length; i++) {
    const moved = Math.abs(celsius[i]! - celsius[last]!);
    const reach = last === i - 1 ? 0 : UNSEEN_C_PER_SECOND * (atSeconds[i]! - atSeconds[last]!);
    // Most readings lie near the last good one; only a step opens a search.
    if (moved <= thresholdC + reach) {
      if (last < i - 1) good = i;
      last = i;
      continue;
    }
    const leftC = around(celsius, Math.max(good, last - 2), last + 1);
    const outlier =
      spikeAt(celsius, i, leftC, thresholdC) ?? dropoutAt(atSeconds, celsius, last, i, thresholdC);
    if (outlier === null) {
      good = last = i;
      continue;
    }
    outliers.push(outlier);
    i = outlier.to - 1;
  }
  return outliers;
};

export interface Cleaned {
  /** Indices of the samples that stay. */
  readonly keep: Uint32Array;
  readonly removed: readonly RemovedSample[];
  readonly repairs: readonly Repair[];
}

const impossible = (celsius: Float64Array): Outlier[] => {
  const runs: Outlier[] = [];
  for (let i = 0; i < celsius.length; i++) {
    const value = celsius[i]!;
    if (value >= POSSIBLE_C.from && value <= POSSIBLE_C.to) continue;
    runs.push({ from: i, to: i + 1, kind: 'spike' });
  }
  return runs;
};

/**
 * Takes out readings that the kiln cannot have had: impossible values, spikes of a few samples, and
 * dropouts with an impossibly fast step in and back. What is taken out is listed, never replaced.
 */
export const removeOutliers = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  noiseC: CelsiusDelta,
  medianIntervalSeconds: number,
): Cleaned => {
  const isFine =
    celsius.length >= FEWEST_SAMPLES && medianIntervalSeconds <= COARSEST_INTERVAL_SECONDS;
  const thresholdC = celsiusDelta(Math.max(SPIKE_C, SPIKE_SIGMAS * noiseC));
  const outOfRange = impossible(celsius);
  const outliers = isFine ? findOutliers(atSeconds, celsius, thresholdC) : [];
  const kindOf = new Map<number, Repair['kind']>();
  for (const run of outliers) for (let k = run.from; k < run.to; k++) kindOf.set(k, run.kind);
  for (const run of outOfRange) kindOf.set(run.from, 'out-of-range');
  const removed = [...kindOf]
    .sort(([a], [b]) => a - b)
    .map(([i, kind]) => ({ atSeconds: seconds(atSeconds[i]!), celsius: celsius[i]!, kind }));
  const repairOf = (run: Outlier): Repair => ({
    kind: kindOf.get(run.from) ?? run.kind,
    fromSeconds: seconds(atSeconds[run.from]!),
    toSeconds: seconds(atSeconds[run.to - 1]!),
    samples: run.to - run.from,
  });
  const keep = new Uint32Array(celsius.length - kindOf.size);
  for (let i = 0, kept = 0; i < celsius.length; i++) {
    if (kindOf.size === 0 || !kindOf.has(i)) keep[kept++] = i;
  }
  const runs = [...outOfRange, ...outliers.filter((run) => kindOf.get(run.from) === run.kind)];
  return { keep, removed, repairs: runs.sort((a, b) => a.from - b.from).map(repairOf) };
};
