import type { AnalysisDocument, Elements } from '../model/document.ts';
import type { Trace, TraceSummary } from '../model/trace.ts';
import { interpolate, lowerBound } from '../numeric/search.ts';
import { mean } from '../numeric/statistics.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import type { Driven } from './wall-model.ts';

/** Known power at an interval: all of it, none, or not known. */
export const FULL = 1;
export const OFF = -1;
export const UNKNOWN = 0;

/** A firing on steady intervals from the beginning of heating, with what is known of its power. */
export interface PowerCourse extends Driven {
  readonly startSeconds: number;
  readonly power: Int8Array;
}

const INTERVAL_SECONDS = 2 * SECONDS_PER_MINUTE;
/** Elements, air and couple need this to settle once full power begins (chosen) … */
const SETTLING_SECONDS = 15 * SECONDS_PER_MINUTE;
/** … and the wall's face this long after shut-off (reference notes, computed on another kiln). */
const RELAXING_SECONDS = 20 * SECONDS_PER_MINUTE;
/** Below this natural cooling tells little of what happens at heat (chosen). */
const COOLED_BELOW_C = 350;

/** The readings that a course is made from: a trace's, or those of a document's curve. */
interface Recorded {
  readonly atSeconds: ArrayLike<number>;
  readonly celsius: ArrayLike<number>;
  readonly summary: Pick<
    TraceSummary,
    'startSeconds' | 'offSeconds' | 'durationSeconds' | 'gaps' | 'noReadings'
  >;
  readonly limited: Elements['limited'];
}

/** Means over the intervals, and straight lines through intervals without a reading. */
const resampled = (
  { atSeconds, celsius }: Recorded,
  startSeconds: number,
  count: number,
): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => {
    const middle = startSeconds + i * INTERVAL_SECONDS;
    const from = lowerBound(atSeconds, middle - INTERVAL_SECONDS / 2);
    // Both ends count, so that readings on whole minutes weigh alike to either side.
    const to = lowerBound(atSeconds, middle + INTERVAL_SECONDS / 2 + 1e-6);
    if (to <= from + 1) return interpolate(atSeconds, celsius, middle);
    return mean(Array.prototype.slice.call(celsius, from, to) as number[]);
  });

const powerAt = (recorded: Recorded, atSeconds: number, celsius: number): number => {
  const { summary, limited } = recorded;
  const isUnseen = [...summary.gaps, ...summary.noReadings].some(
    ({ fromSeconds, toSeconds }) =>
      atSeconds >= fromSeconds - INTERVAL_SECONDS && atSeconds <= toSeconds + INTERVAL_SECONDS,
  );
  if (isUnseen) return UNKNOWN;
  const isFull = limited.some(
    ({ fromSeconds, toSeconds }) =>
      atSeconds >= fromSeconds + SETTLING_SECONDS && atSeconds <= toSeconds,
  );
  if (isFull) return FULL;
  const { offSeconds } = summary;
  const isOff = offSeconds !== null && atSeconds >= offSeconds + RELAXING_SECONDS;
  return isOff && celsius >= COOLED_BELOW_C ? OFF : UNKNOWN;
};

/** Null where the record starts hot: what the wall had in it then is not known. */
const courseFrom = (recorded: Recorded): PowerCourse | null => {
  const { startSeconds, durationSeconds } = recorded.summary;
  if (startSeconds === null) return null;
  const count = Math.floor((durationSeconds - startSeconds) / INTERVAL_SECONDS) + 1;
  const celsius = resampled(recorded, startSeconds, count);
  return {
    startSeconds,
    intervalSeconds: INTERVAL_SECONDS,
    celsius,
    // The kiln starts at rest, so it started at its room's temperature.
    roomC: celsius[0]!,
    power: Int8Array.from(celsius, (value, i) =>
      powerAt(recorded, startSeconds + i * INTERVAL_SECONDS, value),
    ),
  };
};

/** The course of a firing whose full record is at hand. */
export const courseOfTrace = (trace: Trace, limited: Elements['limited']): PowerCourse | null =>
  courseFrom({
    atSeconds: trace.atSeconds,
    celsius: trace.celsius,
    summary: trace.summary,
    limited,
  });

/** The course of a firing of which the document is left, from its thinned curve. */
export const courseOfDocument = ({
  curve,
  trace,
  elements,
}: Pick<AnalysisDocument, 'curve' | 'trace' | 'elements'>): PowerCourse | null =>
  elements === null ? null : courseFrom({ ...curve, summary: trace, limited: elements.limited });
