import { movedBy } from '../model/moved.ts';
import type { ZoneColumn } from '../model/log.ts';
import type { Trace, TraceSummary } from '../model/trace.ts';
import { celsius, celsiusDelta, seconds } from '../units.ts';

const inTurn = (earlier: Float64Array, later: Float64Array): Float64Array => {
  const both = new Float64Array(earlier.length + later.length);
  both.set(earlier);
  both.set(later, earlier.length);
  return both;
};

/** A column that only one log may have, with no readings where the other has none. */
const eitherInTurn = (
  earlier: Float64Array | null,
  later: Float64Array | null,
  [before, after]: readonly [number, number],
): Float64Array | null => {
  if (earlier === null && later === null) return null;
  const none = (count: number): Float64Array => new Float64Array(count).fill(NaN);
  return inTurn(earlier ?? none(before), later ?? none(after));
};

const zonesInTurn = (
  earlier: Trace,
  later: Trace,
  counts: readonly [number, number],
): ZoneColumn[] => {
  const names = new Set([...earlier.zones, ...later.zones].map(({ channel }) => channel));
  const columnOf = ({ zones }: Trace, name: string): Float64Array | null =>
    zones.find(({ channel }) => channel === name)?.celsius ?? null;
  return [...names].map((channel) => ({
    channel,
    celsius: eitherInTurn(columnOf(earlier, channel), columnOf(later, channel), counts)!,
  }));
};

/** Both summaries as one; `later` is on the clock of the earlier one already. */
const summaryOfBoth = (
  earlier: TraceSummary,
  later: TraceSummary,
  laterBeginsSeconds: number,
): TraceSummary => {
  const hotter = earlier.peakC > later.peakC ? earlier : later;
  const gap = {
    fromSeconds: earlier.durationSeconds,
    toSeconds: seconds(laterBeginsSeconds),
  };
  return {
    samples: earlier.samples + later.samples,
    startInstant: earlier.startInstant,
    durationSeconds: seconds(laterBeginsSeconds + later.durationSeconds),
    medianIntervalSeconds: later.medianIntervalSeconds,
    noiseC: celsiusDelta(Math.max(earlier.noiseC, later.noiseC)),
    resolutionC: celsiusDelta(Math.max(earlier.resolutionC, later.resolutionC)),
    minC: celsius(Math.min(earlier.minC, later.minC)),
    peakC: hotter.peakC,
    peakAtSeconds: hotter.peakAtSeconds,
    startSeconds: earlier.startSeconds,
    offSeconds: later.offSeconds,
    gaps: [...earlier.gaps, gap, ...later.gaps],
    noReadings: [...earlier.noReadings, ...later.noReadings],
    repairs: [...earlier.repairs, ...later.repairs],
    legs: [...earlier.legs, ...later.legs],
  };
};

/**
 * Two records of one load as one, on the earlier one's clock. What lies between them was seen by
 * nobody: it is a gap, and `joinedAt` keeps every sum from drawing a line across it.
 *
 * @param laterBeginsSeconds the later record's first sample on the earlier one's clock
 */
export const joinTraces = (earlier: Trace, later: Trace, laterBeginsSeconds: number): Trace => {
  const counts = [earlier.celsius.length, later.celsius.length] as const;
  return {
    summary: summaryOfBoth(
      earlier.summary,
      movedBy(later.summary, laterBeginsSeconds),
      laterBeginsSeconds,
    ),
    atSeconds: inTurn(
      earlier.atSeconds,
      later.atSeconds.map((at) => at + laterBeginsSeconds),
    ),
    celsius: inTurn(earlier.celsius, later.celsius),
    smoothC: inTurn(earlier.smoothC, later.smoothC),
    slopeCPerHour: inTurn(earlier.slopeCPerHour, later.slopeCPerHour),
    slopeErrorCPerHour: inTurn(earlier.slopeErrorCPerHour, later.slopeErrorCPerHour),
    setpointC: eitherInTurn(earlier.setpointC, later.setpointC, counts),
    outputPercent: eitherInTurn(earlier.outputPercent, later.outputPercent, counts),
    zones: zonesInTurn(earlier, later, counts),
    removed: [...earlier.removed, ...movedBy(later.removed, laterBeginsSeconds)],
    joinedAt: counts[0],
  };
};
