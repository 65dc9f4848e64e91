import type { AlignedLeg } from '../../model/document.ts';
import type { Schedule } from '../../model/schedule.ts';
import type { TraceSummary } from '../../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, type Draft } from '../detector.ts';
import { lengthMinutes, topC } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Chosen: a segment of less time cannot be told from the bend between its neighbours … */
const SHORTEST_MINUTES = 5;
/** … nor one of fewer readings than this (chosen). */
const FEWEST_READINGS = 3;
/** Heat-work is done in the last stretch below the top (reference: over the last 100 °C; chosen wider). */
const NEAR_TOP_DELTA_C = 150;

const isNearTop = (schedule: Schedule, segment: number): boolean =>
  (schedule.segments[segment]?.targetC ?? -Infinity) >= topC(schedule) - NEAR_TOP_DELTA_C;

const shortestMinutes = ({ medianIntervalSeconds }: TraceSummary): number =>
  Math.max(SHORTEST_MINUTES, (FEWEST_READINGS * medianIntervalSeconds) / SECONDS_PER_MINUTE);

/** What a missing climb was to take with the hold that went with it. */
const plannedMinutesOf = (legs: readonly AlignedLeg[], segment: number): number =>
  legs
    .filter((leg) => leg.segment === segment && leg.actual === null)
    .reduce((sum, leg) => sum + lengthMinutes(leg.planned), 0);

/** Was a segment passed over, while later ones ran? What never came after the last is ended-early. */
export const segmentMissing = defineScheduleDetector({
  id: 'segment-missing',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, heatWork }) => {
    const { legs } = alignment;
    const leastMinutes = shortestMinutes(trace);
    const drafts = legs.flatMap(({ segment, kind, planned, actual }, i): Draft[] => {
      if (segment === null || kind === 'hold' || actual !== null) return [];
      const next = legs.slice(i + 1).find((leg) => leg.segment !== null && leg.actual !== null);
      const before = legs.slice(0, i).findLast((leg) => leg.actual !== null);
      const plannedMinutes = plannedMinutesOf(legs, segment);
      if (!next?.actual || plannedMinutes < leastMinutes) return [];
      const cost = isNearTop(schedule, segment) && certainlyMissed(heatWork);
      return [
        {
          // A segment left out below the top changes little by itself; at the top it is the firing.
          severity: cost ? 'act' : 'watch',
          evidence: [
            {
              fromSeconds: before?.actual?.endSeconds ?? next.actual.startSeconds,
              toSeconds: next.actual.startSeconds,
              celsius: next.actual.startC,
            },
          ],
          figures: { segment, plannedMinutes, targetC: planned.endC },
          thresholds: { plannedMinutes: leastMinutes },
          instead: ['schedule-suspect', 'ramp-fast', 'log-gap'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
