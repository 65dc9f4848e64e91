import type { Repair } from '../model/trace.ts';
import { seconds } from '../units.ts';
import { median, spreadIndices } from '../numeric/statistics.ts';

/** A swap of rows recovers within this many samples; a clock that was set back does not (chosen). */
const SWAP_LENGTH = 3;
/** A forward step is only ever suspected as a changed clock from here on (chosen). */
const FORWARD_JUMP_SECONDS = 600;
/** Clocks are mostly moved by whole hours, give or take a sample (daylight saving, a wrong zone). */
const WHOLE_HOUR_TOLERANCE_SECONDS = 90;
/**
 * What the kiln may have moved over a changed clock, as a share of what it would have moved in the
 * missing time; and how far it would have had to move for that to tell (all chosen). A move by
 * anything but whole hours must be plainer to be believed.
 */
const WHOLE_HOURS = { leastC: 25, share: 0.2 } as const;
const ANY_MOVE = { leastC: 50, share: 0.05 } as const;
/** From this share of equal stamps on they are taken as rounded, not as rows written twice. */
const ROUNDED_STAMPS_SHARE = 0.05;

const INTERVAL_SAMPLE_COUNT = 20_000;

export interface ClockRepair {
  /** Strictly increasing. */
  readonly atSeconds: Float64Array;
  /** For each output sample, the row of the log it came from. */
  readonly row: Uint32Array;
  readonly repairs: readonly Repair[];
  /** The repaired time of a moment by the log's own stamps. */
  readonly onRepairedClock: (stampSeconds: number) => number;
}

/** The median of the positive steps between stamps; 0 with fewer than two rows. */
export const medianInterval = (atSeconds: Float64Array): number => {
  const steps = spreadIndices(atSeconds.length - 1, INTERVAL_SAMPLE_COUNT)
    .map((i) => atSeconds[i + 1]! - atSeconds[i]!)
    .filter((step) => step > 0);
  return steps.length === 0 ? 0 : median(steps);
};

/** 0, 1, 2 … `count − 1`. */
const indices = (count: number): Uint32Array => {
  const result = new Uint32Array(count);
  for (let i = 0; i < count; i++) result[i] = i;
  return result;
};

const isReversed = (stamps: Float64Array): boolean => {
  let back = 0;
  let forward = 0;
  for (let i = 1; i < stamps.length; i++) {
    if (stamps[i]! < stamps[i - 1]!) back++;
    else if (stamps[i]! > stamps[i - 1]!) forward++;
  }
  return back > forward;
};

/** Whether the stamps catch up again within a few rows: rows swapped, not a clock set back. */
const isSwap = (stamps: Float64Array, i: number): boolean => {
  const before = stamps[i - 1]!;
  for (let k = i + 1; k <= Math.min(i + SWAP_LENGTH, stamps.length - 1); k++) {
    if (stamps[k]! >= before) return true;
  }
  return i + SWAP_LENGTH >= stamps.length && stamps.length > SWAP_LENGTH;
};

const isWholeHours = (spanSeconds: number, interval: number): boolean =>
  Math.abs(spanSeconds - Math.round(spanSeconds / 3600) * 3600) <=
    Math.max(WHOLE_HOUR_TOLERANCE_SECONDS, interval) && spanSeconds > 1800;

/** Whether a forward step left the temperature where it was in mid-climb (or mid-fall). */
const isForwardJump = (
  stamps: Float64Array,
  celsius: Float64Array,
  i: number,
  interval: number,
): boolean => {
  const step = stamps[i]! - stamps[i - 1]!;
  const lost = step - interval;
  if (lost < FORWARD_JUMP_SECONDS || i < 5 || i + 5 >= stamps.length) return false;
  const before = (celsius[i - 1]! - celsius[i - 5]!) / (stamps[i - 1]! - stamps[i - 5]!);
  const after = (celsius[i + 4]! - celsius[i]!) / (stamps[i + 4]! - stamps[i]!);
  if (!(before * after > 0)) return false;
  const slope = Math.min(Math.abs(before), Math.abs(after));
  const { leastC, share } = isWholeHours(lost, interval) ? WHOLE_HOURS : ANY_MOVE;
  const expected = slope * step;
  return expected > leastC && Math.abs(celsius[i]! - celsius[i - 1]!) < share * expected;
};

interface Shifted {
  readonly atSeconds: Float64Array;
  readonly repairs: Repair[];
  readonly shifts: readonly { readonly fromStamp: number; readonly bySeconds: number }[];
}

/** Takes steps of the clock out, so that later samples follow at the usual interval. */
const withoutJumps = (stamps: Float64Array, celsius: Float64Array): Shifted => {
  const interval = medianInterval(stamps);
  const atSeconds = stamps.slice();
  const repairs: Repair[] = [];
  const shifts: { fromStamp: number; bySeconds: number }[] = [];
  let shift = 0;
  for (let i = 1; i < stamps.length; i++) {
    const step = stamps[i]! - stamps[i - 1]!;
    const setBack = step < 0 && !isSwap(stamps, i) && stamps[i - 1]! >= stamps[Math.max(0, i - 2)]!;
    if (setBack || (step > 0 && isForwardJump(stamps, celsius, i, interval))) {
      const at = stamps[i - 1]! + shift;
      shift += interval - step;
      shifts.push({ fromStamp: stamps[i]!, bySeconds: shift });
      repairs.push({
        kind: 'clock-jump',
        fromSeconds: seconds(at),
        toSeconds: seconds(at + interval),
        samples: stamps.length - i,
        movedSeconds: seconds(step - interval),
      });
    }
    atSeconds[i] = stamps[i]! + shift;
  }
  return { atSeconds, repairs, shifts };
};

const spanRepair = (
  kind: Repair['kind'],
  atSeconds: Float64Array,
  first: number,
  last: number,
  samples: number,
): Repair => ({
  kind,
  fromSeconds: seconds(atSeconds[first]!),
  toSeconds: seconds(atSeconds[last]!),
  samples,
});

/** Sorts rows by time, remembering which moved. */
const inOrder = (atSeconds: Float64Array): { row: Uint32Array; repairs: Repair[] } => {
  const row = indices(atSeconds.length);
  let first = -1;
  let last = -1;
  let moved = 0;
  for (let i = 1; i < atSeconds.length; i++) {
    if (atSeconds[i]! >= atSeconds[i - 1]!) continue;
    if (first < 0) first = i - 1;
    last = i;
    moved++;
  }
  if (moved === 0) return { row, repairs: [] };
  row.sort((a, b) => atSeconds[a]! - atSeconds[b]! || a - b);
  return { row, repairs: [spanRepair('out-of-order', atSeconds, first, last, moved)] };
};

/** Spreads a run of equal, rounded stamps evenly up to the next stamp. */
const spreadRun = (at: Float64Array, from: number, to: number, usualStep: number): void => {
  const stamp = at[from]!;
  const nextStep = to < at.length ? at[to]! - stamp : usualStep;
  const room = Math.min(nextStep, usualStep > 0 ? 2 * usualStep : nextStep);
  for (let k = from + 1; k < to; k++) at[k] = stamp + ((k - from) * room) / (to - from);
};

/** Makes the stamps strictly increasing: rounded ones are spread, repeated rows dropped. */
const withoutTies = (
  sorted: Float64Array,
  row: Uint32Array,
): { atSeconds: Float64Array; row: Uint32Array; repairs: Repair[] } => {
  const isTie = (i: number) => i > 0 && sorted[i] === sorted[i - 1];
  let ties = 0;
  let first = 0;
  let last = 0;
  for (let i = 1; i < sorted.length; i++) {
    if (!isTie(i)) continue;
    if (ties++ === 0) first = i;
    last = i;
  }
  if (ties === 0) return { atSeconds: sorted, row, repairs: [] };
  const repairs = [spanRepair('duplicate', sorted, first, last, ties)];
  const usualStep = medianInterval(sorted);
  // Where no two stamps differ there is no time to spread anything over.
  if (ties < ROUNDED_STAMPS_SHARE * sorted.length || usualStep === 0) {
    const kept = row.filter((_, i) => !isTie(i));
    return { atSeconds: sorted.filter((_, i) => !isTie(i)), row: kept, repairs };
  }
  const spread = sorted.slice();
  for (let i = 0; i < sorted.length;) {
    let end = i + 1;
    while (end < sorted.length && sorted[end] === sorted[i]) end++;
    spreadRun(spread, i, end, usualStep);
    i = end;
  }
  return { atSeconds: spread, row, repairs };
};

/**
 * Puts a log's stamps on one forward-running clock: a log written newest first is turned round,
 * swapped rows are sorted, a clock set back or forward is followed on, equal stamps are spread
 * (when rounding made them) or dropped (when a row was written twice). Each is a repair.
 */
export const repairClock = (stamps: Float64Array, celsius: Float64Array): ClockRepair => {
  const reversed = isReversed(stamps);
  const forward = reversed ? stamps.slice().reverse() : stamps;
  const forwardCelsius = reversed ? celsius.slice().reverse() : celsius;
  const shifted = withoutJumps(forward, forwardCelsius);
  const ordered = inOrder(shifted.atSeconds);
  const isInOrder = ordered.repairs.length === 0;
  const sorted = isInOrder
    ? shifted.atSeconds
    : Float64Array.from(ordered.row, (i) => shifted.atSeconds[i]!);
  const untied = withoutTies(sorted, ordered.row);
  const origin = untied.atSeconds[0] ?? 0;
  const lastRow = stamps.length - 1;
  return {
    atSeconds: origin === 0 ? untied.atSeconds : untied.atSeconds.map((at) => at - origin),
    row: reversed ? untied.row.map((i) => lastRow - i) : untied.row,
    repairs: [...shifted.repairs, ...ordered.repairs, ...untied.repairs].map((repair) => ({
      ...repair,
      fromSeconds: seconds(repair.fromSeconds - origin),
      toSeconds: seconds(repair.toSeconds - origin),
    })),
    onRepairedClock: (stamp) =>
      stamp +
      (shifted.shifts.findLast((shift) => shift.fromStamp <= stamp)?.bySeconds ?? 0) -
      origin,
  };
};
