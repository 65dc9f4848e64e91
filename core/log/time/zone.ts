import { SECONDS_PER_DAY } from './civil.ts';

/** A stretch in which a zone keeps one offset, in seconds since 1970. */
interface OffsetStretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly offsetSeconds: number;
}

/** No zone changes its offset twice within this (chosen; a fasting month's pause lasts longer). */
const LOOK_SECONDS = 7 * SECONDS_PER_DAY;

type OffsetAt = (epochSeconds: number) => number;

/**
 * The offset of a zone by the platform's copy of the IANA database. Zone, calendar and locale are
 * all named, so nothing of the machine's own settings comes in.
 */
const offsetsOf = (timeZone: string): OffsetAt => {
  // eslint-disable-next-line no-restricted-globals -- zone and locale are given; see above
  const format = new Intl.DateTimeFormat('en-u-ca-iso8601-nu-latn', {
    timeZone,
    hourCycle: 'h23',
    ...{ year: 'numeric', month: 'numeric', day: 'numeric' },
    ...{ hour: 'numeric', minute: 'numeric', second: 'numeric' },
  });
  return (epochSeconds) => {
    const parts = new Map(
      format.formatToParts(epochSeconds * 1000).map(({ type, value }) => [type, Number(value)]),
    );
    const of = (type: 'year' | 'month' | 'day' | 'hour' | 'minute' | 'second') => parts.get(type)!;
    const localMs = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'));
    return localMs / 1000 + of('second') - epochSeconds;
  };
};

/** The last second before the offset changes between two moments whose offsets differ. */
const changeBetween = (offsetAt: OffsetAt, from: number, to: number): number => {
  const offset = offsetAt(from);
  let [before, after] = [from, to];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (offsetAt(middle) === offset) before = middle;
    else after = middle;
  }
  return after;
};

const stretchesOf = (offsetAt: OffsetAt, from: number, to: number): OffsetStretch[] => {
  const stretches: OffsetStretch[] = [];
  let begins = -Infinity;
  let at = from;
  for (; at < to; at += LOOK_SECONDS) {
    if (offsetAt(at) === offsetAt(at + LOOK_SECONDS)) continue;
    const change = changeBetween(offsetAt, at, at + LOOK_SECONDS);
    stretches.push({ fromSeconds: begins, toSeconds: change, offsetSeconds: offsetAt(at) });
    begins = change;
  }
  stretches.push({ fromSeconds: begins, toSeconds: Infinity, offsetSeconds: offsetAt(at) });
  return stretches;
};

/** Wall clock readings as seconds since 1970, and the offset of each in minutes. */
export interface ZonedTimes {
  readonly epochSeconds: Float64Array;
  readonly offsetMinutesOf: (row: number) => number;
}

/** Whether a zone is known by that IANA name. */
export const isTimeZone = (timeZone: string): boolean => {
  try {
    offsetsOf(timeZone);
    return /^(?:UTC|[A-Za-z_]+\/[\w/+-]+)$/.test(timeZone);
  } catch {
    return false;
  }
};

/**
 * The moments at which a zone's wall clock showed some readings, given as if they were UTC. An hour
 * that comes twice in autumn is told by the order of the rows; one that was skipped in spring is
 * counted on from the offset before. NaN stays NaN.
 */
export const inTimeZone = (wallSeconds: Float64Array, timeZone: string): ZonedTimes => {
  let [least, most] = [Infinity, -Infinity];
  for (let row = 0; row < wallSeconds.length; row += 1) {
    if (wallSeconds[row]! < least) least = wallSeconds[row]!;
    if (wallSeconds[row]! > most) most = wallSeconds[row]!;
  }
  if (least > most) return { epochSeconds: wallSeconds, offsetMinutesOf: () => 0 };
  const stretches = stretchesOf(
    offsetsOf(timeZone),
    least - 2 * SECONDS_PER_DAY,
    most + 2 * SECONDS_PER_DAY,
  );
  return resolved(wallSeconds, stretches);
};

/** So far from a change of its offset a stretch alone can hold a wall clock's reading. */
const CLEAR_SECONDS = SECONDS_PER_DAY;

/** The moments at which a wall clock can have shown a reading: mostly one, two, or none. */
const momentsOf = (wall: number, stretches: readonly OffsetStretch[]): number[] =>
  stretches.flatMap(({ fromSeconds, toSeconds, offsetSeconds }) => {
    const moment = wall - offsetSeconds;
    return moment >= fromSeconds && moment < toSeconds ? [moment] : [];
  });

/** A reading that no clock showed: it was not put forward, and kept the offset before. */
const skipped = (wall: number, stretches: readonly OffsetStretch[]): number =>
  wall - stretches.findLast((one) => wall - one.offsetSeconds >= one.toSeconds)!.offsetSeconds;

const resolved = (wall: Float64Array, stretches: readonly OffsetStretch[]): ZonedTimes => {
  const known = wall.filter((seconds) => !Number.isNaN(seconds));
  // Newest first, the later of two hours of one name comes first.
  const isBackward = known[known.length - 1]! < known[0]!;
  let last = isBackward ? Infinity : -Infinity;
  let current = stretches[0]!;
  const careful = (seconds: number): number => {
    const moments = momentsOf(seconds, stretches);
    if (isBackward) moments.reverse();
    const follows = moments.find((moment) => (isBackward ? moment <= last : moment >= last));
    const found = follows ?? moments[0] ?? skipped(seconds, stretches);
    current = stretches.findLast(({ fromSeconds }) => found >= fromSeconds) ?? current;
    return found;
  };
  const epochSeconds = new Float64Array(wall.length);
  for (let row = 0; row < wall.length; row += 1) {
    const moment = wall[row]! - current.offsetSeconds;
    const isClear =
      moment - current.fromSeconds > CLEAR_SECONDS && current.toSeconds - moment > CLEAR_SECONDS;
    epochSeconds[row] = isClear || Number.isNaN(moment) ? moment : careful(wall[row]!);
    if (!Number.isNaN(moment)) last = epochSeconds[row]!;
  }
  return {
    epochSeconds,
    offsetMinutesOf: (row) => (wall[row]! - epochSeconds[row]!) / 60,
  };
};
