import type { Span } from '../model/scalars.ts';
import { seconds } from '../units.ts';
import { lowerBound } from '../numeric/search.ts';

/** A pause is a gap from this many usual intervals on (chosen: a few lost samples hide nothing). */
const GAP_INTERVALS = 4;
/** … and from this long on, whatever the interval (chosen: no kiln does anything much in 3 min). */
const GAP_SECONDS = 180;

const spanBetween = (fromSeconds: number, toSeconds: number): Span => ({
  fromSeconds: seconds(fromSeconds),
  toSeconds: seconds(toSeconds),
});

/** Stretches without samples that are much longer than the log's usual interval. */
export const findGaps = (atSeconds: Float64Array, medianIntervalSeconds: number): Span[] => {
  const limit = Math.max(GAP_SECONDS, GAP_INTERVALS * medianIntervalSeconds);
  const gaps: Span[] = [];
  for (let i = 1; i < atSeconds.length; i++) {
    if (atSeconds[i]! - atSeconds[i - 1]! <= limit) continue;
    gaps.push(spanBetween(atSeconds[i - 1]!, atSeconds[i]!));
  }
  return gaps;
};

/**
 * Stretches in which rows came without a reading. Each row stands for half an interval to either
 * side, or to the good sample that is nearer; rows that follow on each other are one stretch.
 */
export const findNoReadings = (
  atSeconds: Float64Array,
  noReadingSeconds: readonly number[],
  medianIntervalSeconds: number,
): Span[] => {
  const half = medianIntervalSeconds / 2;
  const begins = atSeconds[0] ?? 0;
  const spans: Span[] = [];
  for (const moment of [...noReadingSeconds].sort((a, b) => a - b)) {
    const next = lowerBound(atSeconds, moment);
    const from = Math.max(moment - half, next > 0 ? atSeconds[next - 1]! : begins);
    const to = Math.min(moment + half, next < atSeconds.length ? atSeconds[next]! : moment);
    // The record begins with its first reading; what came before it lies outside.
    if (to <= from) continue;
    const last = spans.at(-1);
    if (last !== undefined && from <= last.toSeconds + half) {
      spans[spans.length - 1] = spanBetween(last.fromSeconds, Math.max(to, last.toSeconds));
    } else {
      spans.push(spanBetween(from, to));
    }
  }
  return spans;
};
