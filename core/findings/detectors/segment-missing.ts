import type { Schedule } from '../../model/schedule.ts';
import { foundAny, type Draft } from '../detector.ts';
import { topC } from '../legs.ts';
import { missingSegments, shortestMinutes } from '../missing-segments.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Heat-work is done in the last stretch below the top (the chart: over 100 °C; chosen wider). */
const NEAR_TOP_DELTA_C = 150;

const isNearTop = (schedule: Schedule, targetC: number): boolean =>
  targetC >= topC(schedule) - NEAR_TOP_DELTA_C;

/** Was a segment passed over, while later ones ran? What never came after the last is ended-early. */
export const segmentMissing = defineScheduleDetector({
  id: 'segment-missing',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, heatWork }) => {
    const leastMinutes = shortestMinutes(trace);
    const missing = missingSegments(schedule, alignment, trace);
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
