import { mean } from '../numeric/statistics.ts';
import { StretchFits } from './fits.ts';
import { lowerBound } from '../numeric/search.ts';
import { averaged } from './thin.ts';

/** How much of the course on either side of a knee says where it is (chosen: 20 minutes). */
const SHOULDER_SECONDS = 1200;
const FEWEST_SHOULDER_SAMPLES = 3;
/** More points than this place no knee better: some five seconds apart. */
const MOST_POINTS = 1000;

export interface KneeSearch {
  /** The knee is looked for between these two moments. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** The shoulders reach no further than these: the neighbouring knees. */
  readonly leftLimitSeconds: number;
  readonly rightLimitSeconds: number;
  /** The level the course is thought to bend at, where one is known; it pulls, and does not bind. */
  readonly levelC?: number;
  readonly noiseC?: number;
}

/** How near to a known level a knee lies (chosen: a controller's arrival). */
const LEVEL_SLACK_C = 3;
/** Courses depart from lines by this much, however quiet the couple (chosen). */
const RIPPLE_C = 0.7;

/**
 * The moment at which a course bends: where the line before and the line after together leave the
 * least squares. Works on the full samples around a knee that a thinned search has found; returns
 * the middle of the search where there are too few samples to say.
 */
export const locateKnee = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  search: KneeSearch,
): number => {
  const { fromSeconds, toSeconds } = search;
  const left = Math.max(search.leftLimitSeconds, fromSeconds - SHOULDER_SECONDS);
  const right = Math.min(search.rightLimitSeconds, toSeconds + SHOULDER_SECONDS);
  const first = lowerBound(atSeconds, left);
  const last = lowerBound(atSeconds, right + 1e-6);
  const course = averaged(
    atSeconds.subarray(first, last),
    celsius.subarray(first, last),
    MOST_POINTS,
  );
  const times = course.atSeconds;
  const fits = new StretchFits(times, course.celsius);
  const lowest = Math.max(FEWEST_SHOULDER_SAMPLES, lowerBound(times, fromSeconds));
  const highest = Math.min(times.length - FEWEST_SHOULDER_SAMPLES, lowerBound(times, toSeconds));
  const spread = Math.hypot(RIPPLE_C, search.noiseC ?? 0);
  let best = (fromSeconds + toSeconds) / 2;
  let least = Infinity;
  for (let cut = lowest; cut <= highest; cut++) {
    const before = fits.line(0, cut);
    const after = fits.line(cut, times.length);
    const offLevel =
      search.levelC === undefined
        ? 0
        : (fits.mean(cut - 1, cut + 1) - search.levelC) / Math.hypot(LEVEL_SLACK_C, spread);
    const cost = (before.squares + after.squares) / spread ** 2 + offLevel ** 2;
    if (cost >= least) continue;
    least = cost;
    best = crossing(times, before, after, cut);
  }
  return Math.min(Math.max(best, fromSeconds), toSeconds);
};

/** Where the two lines meet, kept between the samples on either side of the cut. */
const crossing = (
  times: Float64Array,
  before: { ratePerHour: number; meanC: number },
  after: { ratePerHour: number; meanC: number },
  cut: number,
): number => {
  const earlier = times[cut - 1]!;
  const later = times[cut]!;
  const turn = (before.ratePerHour - after.ratePerHour) / 3600;
  if (Math.abs(turn) < 1e-6) return (earlier + later) / 2;
  const t1 = mean(times.subarray(0, cut));
  const t2 = mean(times.subarray(cut));
  const meets =
    (after.meanC - before.meanC + (before.ratePerHour * t1 - after.ratePerHour * t2) / 3600) / turn;
  return Math.min(Math.max(meets, earlier), later);
};
