import type { Span } from '../model/scalars.ts';

/** More marks than this cannot be told apart on a screen or on paper (chosen). */
export const MOST_MARKS = 40;

const length = ({ fromSeconds, toSeconds }: Span): number => toSeconds - fromSeconds;

/** The longest of many spans, as many as can be marked on the curve, in order of time. */
export const longest = (spans: readonly Span[]): Span[] =>
  [...spans]
    .sort((a, b) => length(b) - length(a))
    .slice(0, MOST_MARKS)
    .map(({ fromSeconds, toSeconds }) => ({ fromSeconds, toSeconds }))
    .sort((a, b) => a.fromSeconds - b.fromSeconds);
