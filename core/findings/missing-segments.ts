import type { AlignedLeg, Alignment } from '../model/document.ts';
import type { Evidence } from '../model/finding.ts';
import type { Schedule } from '../model/schedule.ts';
import type { TraceSummary } from '../model/trace.ts';
import { unseenLeg } from '../model/unseen-legs.ts';
import { SECONDS_PER_MINUTE } from '../units.ts';
import {
  evidenceOf,
  isAtRateOf,
  lengthMinutes,
  ranAtRateOfNext,
  ratedClimbs,
  type Climb,
} from './legs.ts';

/** Chosen: a segment of less time cannot be told from the bend between its neighbours … */
const SHORTEST_MINUTES = 5;
/** … nor one of fewer readings than this (chosen). */
const FEWEST_READINGS = 3;

/** A segment that was passed over while later ones ran. */
export interface Missing {
  readonly segment: number;
  readonly targetC: number;
  readonly plannedMinutes: number;
  readonly evidence: Evidence;
}

/** Segments planned for less time than this are not looked for. */
export const shortestMinutes = ({ medianIntervalSeconds }: TraceSummary): number =>
  Math.max(SHORTEST_MINUTES, (FEWEST_READINGS * medianIntervalSeconds) / SECONDS_PER_MINUTE);

/** What was to take place in the legs of a segment that never ran. */
const plannedMinutesOf = (legs: readonly AlignedLeg[], segment: number): number =>
  legs
    .filter((leg) => leg.segment === segment && leg.actual === null)
    .reduce((sum, leg) => sum + lengthMinutes(leg.planned), 0);

/** Segments of which the record has nothing, while later ones ran. */
const skipped = ({ legs }: Alignment, trace: TraceSummary): Missing[] =>
  legs.flatMap(({ segment, kind, planned, actual }, i) => {
    if (segment === null || kind === 'hold' || actual !== null) return [];
    if (unseenLeg(legs, i, trace) !== null) return [];
    const next = legs.slice(i + 1).find((leg) => leg.segment !== null && leg.actual !== null);
    const before = legs.slice(0, i).findLast((leg) => leg.actual !== null);
    if (!next?.actual) return [];
    const evidence = {
      fromSeconds: before?.actual?.endSeconds ?? next.actual.startSeconds,
      toSeconds: next.actual.startSeconds,
      celsius: next.actual.startC,
    };
    const plannedMinutes = plannedMinutesOf(legs, segment);
    return { segment, targetC: planned.endC, plannedMinutes, evidence };
  });

const wasHeld = ({ legs }: Alignment, segment: number): boolean =>
  legs.some((leg) => leg.segment === segment && leg.kind === 'hold' && leg.actual !== null);

/**
 * Segments through which the kiln went at the next segment's rate, without stopping between: the
 * climb is there, because the next one starts lower, but it is not this segment's.
 */
const runThrough = (climbs: readonly Climb[], alignment: Alignment): Missing[] =>
  climbs.flatMap((climb, i) => {
    const { segment, planned, actual, plannedCPerHour, achievedCPerHour } = climb;
    const next = climbs[i + 1];
    if (next === undefined || wasHeld(alignment, segment)) return [];
    // A slow one is told with its rates and its delay by ramp-slow.
    if (!ranAtRateOfNext(climb, next) || achievedCPerHour < plannedCPerHour) return [];
    const plannedMinutes = lengthMinutes(planned);
    return { segment, targetC: planned.endC, plannedMinutes, evidence: evidenceOf(actual) };
  });

/** A straight line that begins this early in a leg took up the leg (chosen) … */
const BEGINS_WITHIN_SHARE = 0.15;
/** … and that goes on so long after its end did not stop for it (chosen). */
const GOES_ON_SECONDS = 10 * SECONDS_PER_MINUTE;

/**
 * Climbs at full power that were driven at the next segment's rate instead. Full power has no rate to
 * be held against, but it bends: where one straight line runs through both, the kiln was held.
 */
const skippedAtFull = (
  schedule: Schedule,
  { legs }: Alignment,
  climbs: readonly Climb[],
  trace: TraceSummary,
): Missing[] =>
  legs.flatMap(({ segment, kind, planned, actual }) => {
    if (segment === null || kind !== 'ramp' || actual === null) return [];
    if (schedule.segments[segment]?.rateCPerHour !== 'full') return [];
    const next = climbs.find((climb) => climb.segment === segment + 1);
    if (next === undefined || !isAtRateOf(actual, next)) return [];
    const latest =
      actual.startSeconds + BEGINS_WITHIN_SHARE * (actual.endSeconds - actual.startSeconds);
    const isStraight = trace.legs.some(
      (line) =>
        line.kind === 'ramp' &&
        line.startSeconds <= latest &&
        line.endSeconds >= actual.endSeconds + GOES_ON_SECONDS,
    );
    if (!isStraight) return [];
    const plannedMinutes = lengthMinutes(planned);
    return { segment, targetC: planned.endC, plannedMinutes, evidence: evidenceOf(actual) };
  });

/** The segments that were passed over while later ones ran, and that the record would have shown. */
export const missingSegments = (
  schedule: Schedule,
  alignment: Alignment,
  trace: TraceSummary,
): Missing[] => {
  const climbs = ratedClimbs(schedule, alignment);
  return [
    ...skipped(alignment, trace),
    ...runThrough(climbs, alignment),
    ...skippedAtFull(schedule, alignment, climbs, trace),
  ].filter(({ plannedMinutes }) => plannedMinutes >= shortestMinutes(trace));
};
