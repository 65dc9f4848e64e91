import type { AlignedLeg, Alignment } from '../../model/document.ts';
import type { Evidence } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import type { TraceSummary } from '../../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, type Draft } from '../detector.ts';
import { evidenceOf, lengthMinutes, ratedClimbs, topC, type Climb } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Chosen: a segment of less time cannot be told from the bend between its neighbours … */
const SHORTEST_MINUTES = 5;
/** … nor one of fewer readings than this (chosen). */
const FEWEST_READINGS = 3;
/** A climb at the next one's rate: this near to it (chosen: as near as controllers keep rates) … */
const NEXT_RATE_PERCENT = 5;
/** … and this far from its own (chosen: clearly beyond a ramp that is merely slow or fast). */
const OWN_RATE_PERCENT = 15;
/** Heat-work is done in the last stretch below the top (the chart: over 100 °C; chosen wider). */
const NEAR_TOP_DELTA_C = 150;

interface Missing {
  readonly segment: number;
  readonly targetC: number;
  readonly plannedMinutes: number;
  readonly evidence: Evidence;
}

const shortestMinutes = ({ medianIntervalSeconds }: TraceSummary): number =>
  Math.max(SHORTEST_MINUTES, (FEWEST_READINGS * medianIntervalSeconds) / SECONDS_PER_MINUTE);

/** What was to take place in the legs of a segment that never ran. */
const plannedMinutesOf = (legs: readonly AlignedLeg[], segment: number): number =>
  legs
    .filter((leg) => leg.segment === segment && leg.actual === null)
    .reduce((sum, leg) => sum + lengthMinutes(leg.planned), 0);

/** Segments of which the record has nothing, while later ones ran. */
const skipped = ({ legs }: Alignment, beginsHot: boolean): Missing[] =>
  legs.flatMap(({ segment, kind, planned, actual }, i) => {
    if (segment === null || kind === 'hold' || actual !== null) return [];
    const next = legs.slice(i + 1).find((leg) => leg.segment !== null && leg.actual !== null);
    const before = legs.slice(0, i).findLast((leg) => leg.actual !== null);
    // A record that begins in mid-firing cannot show the legs before it.
    if (!next?.actual || (before === undefined && beginsHot)) return [];
    const evidence = {
      fromSeconds: before?.actual?.endSeconds ?? next.actual.startSeconds,
      toSeconds: next.actual.startSeconds,
      celsius: next.actual.startC,
    };
    const plannedMinutes = plannedMinutesOf(legs, segment);
    return { segment, targetC: planned.endC, plannedMinutes, evidence };
  });

const offPercent = (rateCPerHour: number, wantedCPerHour: number): number =>
  100 * Math.abs(rateCPerHour / wantedCPerHour - 1);

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
    if (next?.segment !== segment + 1 || wasHeld(alignment, segment)) return [];
    const isNexts = [achievedCPerHour, next.achievedCPerHour].every(
      (rate) => offPercent(rate, next.plannedCPerHour) <= NEXT_RATE_PERCENT,
    );
    if (!isNexts || offPercent(achievedCPerHour, plannedCPerHour) < OWN_RATE_PERCENT) return [];
    const plannedMinutes = lengthMinutes(planned);
    return { segment, targetC: planned.endC, plannedMinutes, evidence: evidenceOf(actual) };
  });

const isNearTop = (schedule: Schedule, targetC: number): boolean =>
  targetC >= topC(schedule) - NEAR_TOP_DELTA_C;

/** Was a segment passed over, while later ones ran? What never came after the last is ended-early. */
export const segmentMissing = defineScheduleDetector({
  id: 'segment-missing',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, heatWork }) => {
    const leastMinutes = shortestMinutes(trace);
    const missing = [
      ...skipped(alignment, trace.startSeconds === null),
      ...runThrough(ratedClimbs(schedule, alignment), alignment),
    ].filter(({ plannedMinutes }) => plannedMinutes >= leastMinutes);
    return foundAny(
      missing.map(({ evidence, ...figures }): Draft => ({
        // A segment left out below the top changes little by itself; at the top it is the firing.
        severity:
          isNearTop(schedule, figures.targetC) && certainlyMissed(heatWork) ? 'act' : 'watch',
        evidence: [evidence],
        figures,
        thresholds: { plannedMinutes: leastMinutes },
        instead: ['schedule-suspect', 'ramp-slow', 'ramp-fast', 'log-gap'],
      })),
    );
  },
});
