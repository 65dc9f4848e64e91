import type { TraceLeg } from '../model/trace.ts';
import { seconds, type Seconds } from '../units.ts';
import { median } from './statistics.ts';

/** A kiln that stands above this at the first reading was hot already (chosen: above any room). */
export const HOT_START_C = 60;
/** Heating is believed once the reading stands this far above where it rested (chosen). */
const RISE_C = 2;
const RISE_SIGMAS = 3;
/** The rise is followed from its first sign to this many times as far, to see how it began. */
const RISE_RATIO = 4;
/** A log that never gets this much warmer than its first reading shows no firing (chosen). */
const CLEARLY_WARMER_C = 20;
/**
 * A kiln switched on from rest warms neither at once in a line (power 1) nor with its square: its
 * mass and the couple's lag bend the start. 1.5 lies between (chosen).
 */
const ONSET_POWER = 1.5;
/** Cooling is natural while it only slows down; a fall that grows by this factor is a new cause. */
const FASTER_COOLING_FACTOR = 1.2;
const FASTER_COOLING_C_PER_HOUR = 10;

interface Course {
  readonly atSeconds: Float64Array;
  readonly smoothC: Float64Array;
  readonly noiseC: number;
}

/**
 * When heating begins, from the log's own rest before it; null where the log begins hot or never
 * warms. A log that begins in mid-climb from cold begins heating with its first sample.
 */
export const findStart = (course: Course): Seconds | null => {
  const { atSeconds, smoothC } = course;
  const firstC = smoothC[0];
  if (firstC === undefined || firstC > HOT_START_C) return null;
  const riseC = Math.max(RISE_C, RISE_SIGMAS * course.noiseC);
  const warm = smoothC.findIndex(
    (value) => value >= firstC + CLEARLY_WARMER_C + RISE_RATIO * riseC,
  );
  if (warm < 0) return null;
  const restC = restBefore(smoothC, warm, riseC);
  const lastBelow = (levelC: number) =>
    smoothC.subarray(0, warm).findLastIndex((value) => value <= levelC);
  const first = lastBelow(restC + riseC) + 1;
  const second = lastBelow(restC + RISE_RATIO * riseC) + 1;
  if (first === 0) return seconds(atSeconds[0]!);
  const ratio = RISE_RATIO ** (1 / ONSET_POWER);
  const onset = (ratio * atSeconds[first]! - atSeconds[second]!) / (ratio - 1);
  const lastAtRest = lastBelow(restC);
  return seconds(Math.max(onset, atSeconds[Math.max(0, lastAtRest)]!));
};

/** The level the kiln rested at before it was clearly warmer. */
const restBefore = (smoothC: Float64Array, warm: number, riseC: number): number => {
  const before = smoothC.subarray(0, warm);
  const lowest = before.reduce((low, value) => Math.min(low, value), Infinity);
  return median(before.filter((value) => value <= lowest + riseC));
};

/**
 * When heating ends for good and natural cooling begins: the start of the last run of cooling legs
 * in which each falls no faster than the one before, since only a switch can make a cooling kiln
 * fall faster. Null where the log ends before that.
 */
export const findOff = (legs: readonly TraceLeg[]): Seconds | null => {
  let first = legs.length - 1;
  // A log may end in an hour at room temperature.
  while (first >= 0 && legs[first]!.kind === 'hold') first--;
  if (first < 0 || legs[first]!.kind !== 'cooling') return null;
  while (first > 0) {
    const earlier = legs[first - 1]!;
    const later = legs[first]!;
    if (earlier.kind !== 'cooling' || isFasterThan(later, earlier)) break;
    first--;
  }
  return legs[first]!.startSeconds;
};

const isFasterThan = (later: TraceLeg, earlier: TraceLeg): boolean =>
  -later.rateCPerHour >
  Math.max(
    FASTER_COOLING_FACTOR * -earlier.rateCPerHour,
    -earlier.rateCPerHour + FASTER_COOLING_C_PER_HOUR,
  );
