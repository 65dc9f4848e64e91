import type { Severity } from '../../model/finding.ts';
import { SECONDS_PER_MINUTE, celsius, seconds } from '../../units.ts';
import { foundAny, type Draft } from '../detector.ts';
import { heatedOn } from '../heated-on.ts';
import { isTop } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Chosen: at cone 6 a quarter to half a cone if it is kept (cones stand 17 and 36 °C apart there). */
const WATCH_DELTA_C = 8;
/** Chosen: what many a working controller overshoots by on its first hold. */
const NOTE_DELTA_C = 5;
/** … or this many times the noise, where that is more. */
const NOTE_SIGMAS = 3;

/** `act` only at the top, and only where the heat-work missed its cone with it. */
const severityOf = (overC: number, noteC: number, costHeatWork: boolean): Severity | null => {
  if (overC < noteC) return null;
  if (overC < Math.max(WATCH_DELTA_C, noteC)) return 'note';
  return costHeatWork ? 'act' : 'watch';
};

/** Did the kiln run past a target before it settled? */
export const overshoot = defineScheduleDetector({
  id: 'overshoot',
  needs: ['overshoots', 'trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, overshoots, trace, heatWork }) => {
    const noteC = Math.max(NOTE_DELTA_C, NOTE_SIGMAS * trace.noiseC, trace.resolutionC);
    const drafts = overshoots.flatMap((over): Draft[] => {
      const { segment, overC, atSeconds, aboveForSeconds } = over;
      const heated = heatedOn(alignment, over);
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const severity = severityOf(overC, noteC, costHeatWork);
      if (severity === null) return [];
      const targetC = schedule.segments[segment]?.targetC ?? 0;
      return [
        {
          severity,
          evidence: [
            {
              fromSeconds: seconds(atSeconds - aboveForSeconds / 2),
              toSeconds: seconds(atSeconds + aboveForSeconds / 2),
              celsius: celsius(targetC + overC),
            },
          ],
          figures: {
            segment,
            targetC,
            overDeltaC: overC,
            aboveMinutes: aboveForSeconds / SECONDS_PER_MINUTE,
            ...heated,
          },
          thresholds: {
            overDeltaC: severity === 'note' ? noteC : Math.max(WATCH_DELTA_C, noteC),
          },
          // A couple that lags shows a peak late, but no climb that goes on.
          instead: heated
            ? ['power-stuck-on', 'schedule-suspect']
            : ['power-stuck-on', 'sensor-lag', 'schedule-suspect'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
