/** Nothing that is fired for its own sake stays below this: what does is drying (chosen). */
const FIRING_C = 400;
/** A kiln that came down to this may have been opened and loaded again (common practice). */
const COOL_C = 150;
/** … and where the record itself begins anew, to this (chosen). */
const COOL_ENOUGH_C = 300;
/** Over such a pause a kiln is unloaded; a power cut is shorter (chosen). */
const LONG_PAUSE_SECONDS = 12 * 3600;
/** A kiln that has warmed by so much is being heated again (chosen: no room and no sun does it). */
const REHEATED_C = 40;
/** Within so much of the coolest the kiln is at rest (chosen). */
const REST_C = 5;
/** How much of the rest before a firing belongs to it: it says where the heating began from. */
const REST_SECONDS = 3600;
/** A kiln never moves by so much so fast; a couple that is open, and closed again, does. */
const FAULT_C = 200;
const FAULT_C_PER_SECOND = 40 / 60;

/** The stretch of samples, `from` up to but without `to`, that one firing takes. */
export interface FiringSpan {
  readonly from: number;
  readonly to: number;
  /** Index of its hottest sample. */
  readonly peak: number;
}

/** A record in order, and where the logger's clock began anew in it. */
export interface Course {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
  readonly beginsAnew: (index: number) => boolean;
}

/**
 * Whether a record may hold several firings, in one cheap look that needs no order and no repair:
 * it is hot, then cool enough, then hot again.
 */
export const mayHoldSeveral = (celsius: Float64Array): boolean => {
  let wasHot = false;
  let wasCoolSince = false;
  for (let i = 0; i < celsius.length; i++) {
    const value = celsius[i]!;
    if (value <= COOL_ENOUGH_C) wasCoolSince = wasHot;
    else if (value >= FIRING_C) {
      if (wasCoolSince) return true;
      wasHot = true;
    }
  }
  return false;
};

/** Where a new record may begin between two samples: after a long pause, or with a new clock. */
const isSeam = ({ atSeconds, beginsAnew }: Course, i: number): boolean =>
  atSeconds[i]! - atSeconds[i - 1]! >= LONG_PAUSE_SECONDS || beginsAnew(i);

/** Whether the course leaps by more than a kiln can between two samples. */
const leaps = ({ atSeconds, celsius }: Course, i: number): boolean => {
  const step = Math.abs(celsius[i]! - celsius[i - 1]!);
  return step > FAULT_C && step > FAULT_C_PER_SECOND * (atSeconds[i]! - atSeconds[i - 1]!);
};

/** The samples between two hot ones, `hot` and `again`. */
interface Valley {
  readonly hot: number;
  readonly again: number;
}

const valleysOf = ({ celsius }: Course): Valley[] => {
  const valleys: Valley[] = [];
  let hot = -1;
  for (let i = 0; i < celsius.length; i++) {
    if (celsius[i]! < FIRING_C) continue;
    if (hot >= 0 && i > hot + 1) valleys.push({ hot, again: i });
    hot = i;
  }
  return valleys;
};

interface Parting {
  /** One firing ends before this index … */
  readonly to: number;
  /** … and the next begins with this one. */
  readonly from: number;
}

/** Where the kiln was coolest before it was first heated again, as two indices around its rest. */
const restIn = ({ celsius }: Course, first: number, again: number): [number, number] => {
  let least = first;
  let end = first;
  for (; end < again && celsius[end]! < celsius[least]! + REHEATED_C; end++) {
    if (celsius[end]! < celsius[least]!) least = end;
  }
  const isAtRest = (i: number) => celsius[i]! <= celsius[least]! + REST_C;
  let from = first;
  while (!isAtRest(from)) from++;
  let to = end - 1;
  while (!isAtRest(to)) to--;
  return [from, to];
};

/** Where a valley parts two firings, or null where it lies within one. */
const partingIn = (course: Course, { hot, again }: Valley): Parting | null => {
  const { atSeconds, celsius } = course;
  let seam = -1;
  let leastC = Infinity;
  for (let i = hot + 1; i <= again; i++) {
    if (isSeam(course, i)) seam = i;
    leastC = Math.min(leastC, celsius[i]!);
  }
  const limitC = seam < 0 ? COOL_C : COOL_ENOUGH_C;
  if (leastC > limitC) return null;
  if (seam < 0 && leaps(course, hot + 1) && leaps(course, again)) return null;
  let first = hot + 1;
  while (celsius[first]! > limitC) first++;
  const [rested, left] = restIn(course, first, again);
  let from = left;
  while (from > rested && atSeconds[left]! - atSeconds[from - 1]! <= REST_SECONDS) from--;
  // A record that begins anew is the next firing's, the cooling before it the last one's.
  const edge = seam >= first && seam <= left ? seam : from;
  from = Math.max(from, edge);
  return { from, to: Math.min(rested + 1, from) };
};

const hottest = (celsius: Float64Array, from: number, to: number): number => {
  let peak = from;
  for (let i = from; i < to; i++) if (celsius[i]! > celsius[peak]!) peak = i;
  return peak;
};

/**
 * The firings of a record: heated from cool to hot, and let cool again. They are parted where the
 * kiln came down far enough to be opened, or where the record begins anew on a kiln that is no
 * longer hot. What only warms (drying, candling, a preheat the evening before) belongs to the
 * firing after it; a power cut, a crash-cool or a couple that was open part nothing. A single
 * firing takes the whole record.
 */
export const findFirings = (course: Course): FiringSpan[] => {
  const { celsius } = course;
  const partings = valleysOf(course)
    .map((valley) => partingIn(course, valley))
    .filter((parting) => parting !== null);
  const starts = [0, ...partings.map(({ from }) => from)];
  const ends = [...partings.map(({ to }) => to), celsius.length];
  return starts.map((from, index) => {
    const to = ends[index]!;
    return { from, to, peak: hottest(celsius, from, to) };
  });
};

/** Whether the record of a firing shows how it began: it does not begin hot. */
export const showsItsBeginning = ({ celsius }: Course, { from }: FiringSpan): boolean =>
  celsius[from]! < FIRING_C;
