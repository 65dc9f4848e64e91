import type { Alignment } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { lowerBound } from '../../core/numeric/search.ts';
import { minMaxIndices } from '../../core/trace/thin.ts';
import type { ShownTrace } from '../worker/protocol.ts';
import type { View } from './view.ts';

/** The columns that one picture of the curve is drawn from; null breaks a line. */
export interface Slice {
  readonly atSeconds: readonly number[];
  /** Which sample of the trace each point is. */
  readonly sample: readonly (number | null)[];
  readonly celsius: readonly (number | null)[];
  readonly slopeCPerHour: readonly (number | null)[];
  /** Kiln minus plan; null where the plan says nothing. */
  readonly differenceC: readonly (number | null)[];
}

/** The sample nearest to a moment. */
export const nearestSample = (atSeconds: ArrayLike<number>, moment: number): number => {
  const after = Math.min(lowerBound(atSeconds, moment), atSeconds.length - 1);
  const before = Math.max(after - 1, 0);
  return moment - atSeconds[before]! <= atSeconds[after]! - moment ? before : after;
};

/** What the plan says at a moment, or null before it begins and after it ends. */
export const plannedAt = (planned: Alignment['planned'], moment: number): number | null => {
  const [first, last] = [planned[0], planned.at(-1)];
  if (!first || !last || moment < first.atSeconds || moment > last.atSeconds) return null;
  let [low, high] = [0, planned.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (planned[middle]!.atSeconds <= moment) low = middle;
    else high = middle;
  }
  const [from, to] = [planned[low]!, planned[high]!];
  const width = to.atSeconds - from.atSeconds;
  const share = width === 0 ? 0 : (moment - from.atSeconds) / width;
  return from.celsius + share * (to.celsius - from.celsius);
};

/** The kiln's reading at a moment, on the straight line across a hole. */
export const curveAt = (
  { atSeconds, celsius }: Pick<ShownTrace, 'atSeconds' | 'celsius'>,
  moment: number,
): number => {
  const after = lowerBound(atSeconds, moment);
  const last = atSeconds.length - 1;
  if (after <= 0 || after > last) return celsius[Math.min(Math.max(after, 0), last)] ?? 0;
  const [from, to] = [atSeconds[after - 1]!, atSeconds[after]!];
  const share = (moment - from) / (to - from);
  return celsius[after - 1]! + share * (celsius[after]! - celsius[after - 1]!);
};

/**
 * The part of a trace that a view shows, thinned so that no peak and no dip is lost, with one sample
 * more on either side so that the line runs out of the picture, and broken at every hole.
 */
export const sliceOf = (
  trace: Pick<ShownTrace, 'atSeconds' | 'celsius' | 'slopeCPerHour'>,
  planned: Alignment['planned'] | null,
  holes: readonly Span[],
  view: View,
  most: number,
): Slice => {
  const start = Math.max(0, lowerBound(trace.atSeconds, view.from) - 1);
  const end = Math.min(trace.atSeconds.length, lowerBound(trace.atSeconds, view.to) + 1);
  const times = trace.atSeconds.subarray(start, end);
  const picked = minMaxIndices(times, trace.celsius.subarray(start, end), most);
  const breaks = holes.map(({ fromSeconds }) => fromSeconds).sort((a, b) => a - b);
  const atSeconds: number[] = [];
  const sample: (number | null)[] = [];
  const put = (at: number, index: number | null): void => {
    atSeconds.push(at);
    sample.push(index);
  };
  let nextBreak = breaks.findIndex((from) => from >= (times[0] ?? 0));
  picked.forEach((index, nth) => {
    const at = times[index]!;
    const before = nth === 0 ? null : times[picked[nth - 1]!]!;
    const from = nextBreak < 0 ? undefined : breaks[nextBreak];
    if (from !== undefined && from < at) {
      if (before !== null) put((before + at) / 2, null);
      while (nextBreak < breaks.length && breaks[nextBreak]! < at) nextBreak++;
    }
    put(at, start + index);
  });
  const column = (value: (index: number) => number | null): (number | null)[] =>
    sample.map((index) => (index === null ? null : value(index)));
  return {
    ...{ atSeconds, sample },
    celsius: column((index) => trace.celsius[index]!),
    slopeCPerHour: column((index) => trace.slopeCPerHour[index]!),
    differenceC: column((index) => {
      const plan = planned === null ? null : plannedAt(planned, trace.atSeconds[index]!);
      return plan === null ? null : trace.celsius[index]! - plan;
    }),
  };
};
