import type { Alignment } from '../model/document.ts';
import type { Trace, TraceSummary } from '../model/trace.ts';
import { interpolate } from '../numeric/search.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../units.ts';
import { coolsByItself, unfinished, type Unfinished } from './legs.ts';

/** Chosen: half as long again as nearly every boundary between legs is known to (6 min). */
export const LEFT_MINUTES = 10;

/**
 * What was left of the schedule when the firing stopped; null where it ran through, where the record
 * shows no cooling, and where nothing but the last hold was cut: that is a short hold's to tell, which
 * measures it better.
 */
export const endsEarly = (
  alignment: Alignment,
  { offSeconds }: Pick<TraceSummary, 'offSeconds'>,
): Unfinished | null => {
  if (offSeconds === null || !coolsByItself(alignment)) return null;
  const left = unfinished(alignment);
  const isLastHold = left.legs.length === 1 && left.legs[0]?.kind === 'hold';
  return left.minutes < LEFT_MINUTES || isLastHold ? null : left;
};

/** The end of a climb is read over this (chosen: long against a controller's ripple). */
const LAST_SECONDS = 30 * SECONDS_PER_MINUTE;
/** A climb that makes less than this share of its rate at its end was giving out (chosen). */
const BRISK_SHARE = 0.7;
/** At full power no rate is planned; slower than the chart's usual last ramp is giving out. */
const BRISK_AT_FULL_C_PER_HOUR = 60;

/**
 * Whether the climb in which a firing ended was giving out: the kiln was at its limit before it was
 * switched off, so that what it did not reach is the cause, and the end only its consequence.
 */
export const wasGivingOut = (
  { legs }: Alignment,
  { atSeconds, smoothC, summary }: Pick<Trace, 'atSeconds' | 'smoothC' | 'summary'>,
): boolean => {
  const last = legs.findLast(({ segment, actual }) => segment !== null && actual !== null);
  if (last?.kind !== 'ramp' || last.actual === null) return false;
  // A leg that was cut may take in the first of the cooling: it climbed to the peak and no further.
  const { startSeconds } = last.actual;
  const isPeakWithin =
    summary.peakAtSeconds > startSeconds && summary.peakAtSeconds < last.actual.endSeconds;
  const endSeconds = isPeakWithin ? summary.peakAtSeconds : last.actual.endSeconds;
  const from = Math.max(startSeconds, endSeconds - LAST_SECONDS);
  const climbedC =
    interpolate(atSeconds, smoothC, endSeconds) - interpolate(atSeconds, smoothC, from);
  const endCPerHour = (climbedC * SECONDS_PER_HOUR) / (endSeconds - from);
  const { rateCPerHour } = last.planned;
  const briskCPerHour =
    rateCPerHour === null ? BRISK_AT_FULL_C_PER_HOUR : BRISK_SHARE * rateCPerHour;
  return endCPerHour < briskCPerHour;
};
