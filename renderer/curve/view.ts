import type { Span } from '../../core/model/scalars.ts';

/** The stretch of the log's clock that the curve shows. */
export interface View {
  readonly from: number;
  readonly to: number;
}

/** The closest one can look: a few samples, and never less than a minute (chosen). */
const FEWEST_SAMPLES = 8;
const LEAST_SECONDS = 60;

/** Room left of and right of a stretch that is brought into view, as a share of it (chosen). */
const ROOM = 0.35;
/** A moment is shown with at least this much about it, as a share of the whole (chosen). */
const LEAST_SHARE = 0.06;

/** What can be looked at, and how closely. */
export interface Limits {
  readonly whole: View;
  readonly leastSeconds: number;
}

export const limitsOf = (whole: View, intervalSeconds: number): Limits => ({
  whole,
  leastSeconds: Math.min(
    whole.to - whole.from,
    Math.max(LEAST_SECONDS, FEWEST_SAMPLES * intervalSeconds),
  ),
});

/** A view moved and narrowed so that it lies within what there is to see. */
export const within = ({ whole, leastSeconds }: Limits, { from, to }: View): View => {
  const most = whole.to - whole.from;
  const span = Math.min(Math.max(to - from, leastSeconds), most);
  const middle = (from + to) / 2;
  const start = Math.min(Math.max(middle - span / 2, whole.from), whole.to - span);
  return { from: start, to: start + span };
};

/** Closer (`factor` below 1) or further, with the moment `about` staying where it is. */
export const zoomed = (limits: Limits, view: View, about: number, factor: number): View => {
  const { whole, leastSeconds } = limits;
  const span = view.to - view.from;
  const most = whole.to - whole.from;
  const wanted = Math.min(Math.max(span * factor, leastSeconds), most);
  const share = span === 0 ? 0.5 : (about - view.from) / span;
  const from = about - share * wanted;
  return within(limits, { from, to: from + wanted });
};

/** The same width, moved by so many seconds. */
export const panned = (limits: Limits, { from, to }: View, bySeconds: number): View =>
  within(limits, { from: from + bySeconds, to: to + bySeconds });

/** The view that shows some stretches with room about them. */
export const about = (limits: Limits, stretches: readonly Span[]): View => {
  const { whole } = limits;
  if (stretches.length === 0) return whole;
  const from = Math.min(...stretches.map(({ fromSeconds }) => fromSeconds));
  const to = Math.max(...stretches.map(({ toSeconds }) => toSeconds));
  const room = Math.max(ROOM * (to - from), (LEAST_SHARE * (whole.to - whole.from)) / 2);
  const cut = { from: Math.max(whole.from, from - room), to: Math.min(whole.to, to + room) };
  return within(limits, cut);
};

/** The view on the way from one to another, `share` of the way along. */
export const between = (from: View, to: View, share: number): View => ({
  from: from.from + (to.from - from.from) * share,
  to: from.to + (to.to - from.to) * share,
});

/** What is less than this share of the whole out of view is not missed (chosen). */
const UNSEEN_SHARE = 0.001;

export const isWhole = ({ whole }: Limits, { from, to }: View): boolean => {
  const unseen = UNSEEN_SHARE * (whole.to - whole.from);
  return from <= whole.from + unseen && to >= whole.to - unseen;
};

/** Where a moment stands across a plot of some width, in its pixels. */
export const placeIn = ({ from, to }: View, width: number, atSeconds: number): number =>
  ((atSeconds - from) / (to - from)) * width;

/** The moment at a place across a plot. */
export const momentAt = ({ from, to }: View, width: number, place: number): number =>
  from + (place / width) * (to - from);
