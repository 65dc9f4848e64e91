import { mean } from '../numeric/statistics.ts';
import type { TraceLeg, Trace } from '../model/trace.ts';
import { interpolate, lowerBound } from '../numeric/search.ts';
import { SECONDS_PER_HOUR } from '../units.ts';

/** A stretch of a firing, from the alignment or from the trace itself. */
export type LegSpan = Pick<TraceLeg, 'kind' | 'startSeconds' | 'endSeconds'>;

/** A soak at or near the top. */
export interface TopHold {
  readonly startSeconds: number;
  readonly endSeconds: number;
  /** Its mean temperature. */
  readonly meanC: number;
}

/** What the end of the climb looked like, as read. */
export interface TopOfFiring {
  readonly topC: number;
  readonly topAtSeconds: number;
  /** Where the climb ended: at the start of the hold if there is one, else at the top. */
  readonly rampEndSeconds: number;
  readonly rampEndC: number;
  /** Where the last 100 °C of the climb began, or the record did. */
  readonly rampFromSeconds: number;
  readonly rampFromC: number;
  /** Mean rate over the last 100 °C, the span of the cone chart; null where too little is seen. */
  readonly rampRateCPerHour: number | null;
  readonly hold: TopHold | null;
}

/** The chart's rates are those over the last 100 °C (cone maker's chart, 2016). */
const LAST_STRETCH_C = 100;
/** A rate over less than this says nothing of a rate over 100 °C (chosen). */
const LEAST_STRETCH_C = 20;
/** A hold further than this under the top is not the hold at the top (chosen). */
const HOLD_NEAR_TOP_C = 20;

const meanBetween = (trace: Trace, fromSeconds: number, toSeconds: number): number => {
  const from = lowerBound(trace.atSeconds, fromSeconds);
  const to = Math.max(lowerBound(trace.atSeconds, toSeconds + 1e-6), from + 1);
  const values = trace.smoothC.subarray(from, to);
  if (values.length === 0) return interpolate(trace.atSeconds, trace.smoothC, fromSeconds);
  return mean(values);
};

const topSample = (trace: Trace): number => {
  let top = 0;
  for (let i = 1; i < trace.smoothC.length; i += 1) {
    if (trace.smoothC[i]! > trace.smoothC[top]!) top = i;
  }
  return top;
};

const holdNearTop = (trace: Trace, legs: readonly LegSpan[], topC: number): TopHold | null => {
  const holds = legs
    .filter(({ kind }) => kind === 'hold')
    .map(({ startSeconds, endSeconds }) => ({
      startSeconds,
      endSeconds,
      meanC: meanBetween(trace, startSeconds, endSeconds),
    }));
  return holds.findLast(({ meanC }) => meanC >= topC - HOLD_NEAR_TOP_C) ?? null;
};

/** The moment the curve last rose through a level before another moment; the record's start if never. */
const lastRiseThrough = (trace: Trace, levelC: number, beforeSeconds: number): number => {
  const { atSeconds, smoothC } = trace;
  let after = lowerBound(atSeconds, beforeSeconds);
  while (after > 0 && smoothC[after - 1]! > levelC) after -= 1;
  if (after === 0) return atSeconds[0]!;
  const before = after - 1;
  if (after >= smoothC.length) return atSeconds[before]!;
  const rise = smoothC[after]! - smoothC[before]!;
  const share = rise > 0 ? Math.min((levelC - smoothC[before]!) / rise, 1) : 0;
  return atSeconds[before]! + share * (atSeconds[after]! - atSeconds[before]!);
};

/** Finds the end of the climb, its last 100 °C and the hold that followed. */
export const topOfFiring = (trace: Trace, legs: readonly LegSpan[]): TopOfFiring => {
  const top = topSample(trace);
  const [topC, topAtSeconds] = [trace.smoothC[top]!, trace.atSeconds[top]!];
  const hold = holdNearTop(trace, legs, topC);
  const rampEndSeconds = hold === null ? topAtSeconds : Math.min(hold.startSeconds, topAtSeconds);
  const rampEndC = interpolate(trace.atSeconds, trace.smoothC, rampEndSeconds);
  const rampFromSeconds = lastRiseThrough(trace, rampEndC - LAST_STRETCH_C, rampEndSeconds);
  const rampFromC = interpolate(trace.atSeconds, trace.smoothC, rampFromSeconds);
  const spanHours = (rampEndSeconds - rampFromSeconds) / SECONDS_PER_HOUR;
  const isSeen = rampEndC - rampFromC >= LEAST_STRETCH_C && spanHours > 0;
  return {
    topC,
    topAtSeconds,
    rampEndSeconds,
    rampEndC,
    rampFromSeconds,
    rampFromC,
    rampRateCPerHour: isSeen ? (rampEndC - rampFromC) / spanHours : null,
    hold,
  };
};
