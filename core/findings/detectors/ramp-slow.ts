import type { Severity } from '../../model/finding.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { endUncertaintyMinutes, evidenceOf, isTop, ratedClimbs, type Climb } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** A climb is beyond a limit if it is this late, or this much slower and at least `leastMinutes` late. */
interface Limit {
  readonly slowerPercent: number;
  readonly leastMinutes: number;
  readonly lateMinutes: number;
}

/**
 * Chosen: a controller that keeps its ramps holds them to a few per cent, and a kiln that begins to
 * lose its elements shows it first as 10 % or ten minutes on the last ramp. Slower counts only with
 * a few minutes' delay, since the end of a short ramp is not known better than that.
 */
const WATCH: Limit = { slowerPercent: 10, leastMinutes: 5, lateMinutes: 10 };
/** Chosen: four fifths of what is watched, so that the first signs are told and kept. */
const NOTE: Limit = { slowerPercent: 8, leastMinutes: 3, lateMinutes: 8 };
/** Chosen: less than this is within what a controller's tuning does on a long ramp. */
const SLIGHT_PERCENT = 5;
/** Chosen: an hour more is paid for in power, and moves the unloading. Both must be reached. */
const ACT: Limit = { slowerPercent: 10, leastMinutes: 60, lateMinutes: Infinity };

interface Lateness {
  readonly slowerPercent: number;
  readonly lateMinutes: number;
}

const lateness = (climb: Climb): Lateness => ({
  slowerPercent: 100 * (1 - climb.achievedCPerHour / climb.plannedCPerHour),
  lateMinutes: climb.tookMinutes - climb.dueMinutes,
});

const isBeyond = (limit: Limit, { slowerPercent, lateMinutes }: Lateness): boolean =>
  lateMinutes >= limit.lateMinutes ||
  (slowerPercent >= limit.slowerPercent && lateMinutes >= limit.leastMinutes);

/** `act` where the slowness cost an hour, or came with heat-work that missed its cone. */
const severityOf = (late: Lateness, costHeatWork: boolean): Severity | null => {
  if (!isBeyond(NOTE, late)) return null;
  if (!isBeyond(WATCH, late) || late.slowerPercent < SLIGHT_PERCENT) return 'note';
  return costHeatWork || isBeyond(ACT, late) ? 'act' : 'watch';
};

/** Did the kiln climb more slowly than the schedule asked? */
export const rampSlow = defineScheduleDetector({
  id: 'ramp-slow',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, heatWork }) => {
    const climbs = ratedClimbs(schedule, alignment);
    if (climbs.length === 0) return notApplicable('no-rated-ramp');
    const drafts = climbs.flatMap((climb): Draft[] => {
      const { segment, planned, actual, plannedCPerHour, achievedCPerHour } = climb;
      const late = lateness(climb);
      if (late.lateMinutes <= endUncertaintyMinutes(trace, achievedCPerHour)) return [];
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const severity = severityOf(late, costHeatWork);
      if (severity === null) return [];
      const { slowerPercent, lateMinutes } = severity === 'note' ? NOTE : WATCH;
      const behindPlanMinutes = (actual.endSeconds - planned.endSeconds) / SECONDS_PER_MINUTE;
      return [
        {
          severity,
          evidence: [evidenceOf(actual)],
          figures: { segment, plannedCPerHour, achievedCPerHour, ...late, behindPlanMinutes },
          thresholds: { slowerPercent, lateMinutes },
          instead: [
            'elements-weak',
            'element-lost',
            'heavy-load',
            'supply-varies',
            'segment-missing',
            'schedule-suspect',
          ],
        },
      ];
    });
    return foundAny(drafts);
  },
});
