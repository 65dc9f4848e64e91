import { mean } from '../numeric/statistics.ts';
import type { TraceLeg } from '../model/trace.ts';
import { seconds, type CelsiusDelta, type Seconds } from '../units.ts';
import { lowerBound } from '../numeric/search.ts';
import { fallsAsOpened } from './shut-kiln.ts';
import { averaged } from './thin.ts';

/** A kiln that stands above this at the first reading was hot already (chosen: above any room). */
const HOT_START_C = 60;
/** A log that never gets this much warmer than where it rested shows no firing (chosen). */
const CLEARLY_WARMER_C = 20;
const CLEARLY_WARMER_SIGMAS = 10;
/** How long a rest before heating is looked at (chosen: an hour says where the kiln rested). */
const REST_SECONDS = 3600;
/**
 * A kiln switched on from rest warms neither at once in a line (power 1) nor with the square of
 * time (power 2): its mass and the couple's lag bend the start. The power that fits best is taken.
 */
const ONSET_POWERS = [1, 1.25, 1.5, 1.75, 2] as const;
const ONSET_POINTS = 160;
/** A rest shorter than this at the head of a log is none: the log began with the firing (chosen). */
const NO_REST_SECONDS = 150;

/** Cooling is natural while it only slows down; a fall that grows by this factor is a new cause. */
const FASTER_COOLING_FACTOR = 1.2;
const FASTER_COOLING_C_PER_HOUR = 10;

interface Readings {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
}

/** Squares left by "at rest at a level until the onset, then rising with a power of time". */
const onsetSquares = (curve: Readings, onset: number, power: number): number => {
  const { atSeconds, celsius } = curve;
  const restC = onset > 0 ? mean(celsius.subarray(0, onset + 1)) : celsius[0]!;
  let overlap = 0;
  let weight = 0;
  let squares = 0;
  for (let i = 0; i < celsius.length; i++) {
    const rise = celsius[i]! - restC;
    const shape = i > onset ? (atSeconds[i]! - atSeconds[onset]!) ** power : 0;
    overlap += rise * shape;
    weight += shape * shape;
    squares += rise * rise;
  }
  return weight > 0 && overlap > 0 ? squares - (overlap * overlap) / weight : squares;
};

/** The first index at which the kiln is surely warmer than the coolest it had been till then. */
const surelyWarmer = (celsius: Float64Array, riseC: number): number => {
  let lowest = Infinity;
  return celsius.findIndex((value) => {
    lowest = Math.min(lowest, value);
    return value - lowest >= riseC;
  });
};

/** Where the coolest stretch before heating begins: what lies before it is an earlier firing's. */
const restBegins = (celsius: Float64Array, warm: number, slackC: number): number => {
  const before = celsius.subarray(0, warm);
  const lowest = before.reduce((low, value) => Math.min(low, value), Infinity);
  return before.findIndex((value) => value <= lowest + slackC);
};

/**
 * When heating begins; null where the log begins hot or never warms. The record from its rest until
 * the kiln is surely warmer is held against a rest followed by a bent rise, for every moment the
 * rise may have begun. A log that begins with the firing begins heating with its first sample.
 */
export const findStart = (readings: Readings, noiseC: CelsiusDelta): Seconds | null => {
  const { atSeconds, celsius } = readings;
  if (!(celsius[0]! <= HOT_START_C)) return null;
  const riseC = Math.max(CLEARLY_WARMER_C, CLEARLY_WARMER_SIGMAS * noiseC);
  const warm = surelyWarmer(celsius, riseC);
  if (warm < 0) return null;
  const first = Math.max(
    restBegins(celsius, warm, 3 * noiseC),
    lowerBound(atSeconds, atSeconds[warm]! - REST_SECONDS),
  );
  const curve = averaged(
    atSeconds.subarray(first, warm + 1),
    celsius.subarray(first, warm + 1),
    ONSET_POINTS,
  );
  let least = Infinity;
  let onset = 0;
  for (let i = 0; i < curve.celsius.length - 1; i++) {
    for (const power of ONSET_POWERS) {
      const squares = onsetSquares(curve, i, power);
      if (squares >= least) continue;
      least = squares;
      onset = i;
    }
  }
  const began = curve.atSeconds[onset]!;
  return seconds(began - atSeconds[0]! < NO_REST_SECONDS ? atSeconds[0]! : began);
};

/**
 * When heating ends for good and natural cooling begins: the start of the last run of cooling legs
 * in which each falls no faster than the one before, since only a switch can make a shut kiln that
 * cools fall faster; a kiln that was opened falls faster than any shut one. Null where the log ends
 * before that.
 */
export const findOff = (legs: readonly TraceLeg[]): Seconds | null => {
  let first = legs.length - 1;
  // A log may end in an hour at room temperature.
  while (first >= 0 && legs[first]!.kind === 'hold') first--;
  if (first < 0 || legs[first]!.kind !== 'cooling') return null;
  while (first > 0) {
    const earlier = legs[first - 1]!;
    const later = legs[first]!;
    if (earlier.kind !== 'cooling') break;
    const isOpening = fallsAsOpened(-later.rateCPerHour, later.startC);
    if (isFasterThan(later, earlier) && !isOpening) break;
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
