import type { Severity } from '../../model/finding.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { endUncertaintyMinutes, evidenceOf, isTop, ratedClimbs, type Climb } from '../legs.ts';
import { isBeyond, type Limit } from '../limit.ts';
import { missingSegments } from '../missing-segments.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/** Chosen: as far off as a slow ramp is watched from, so that both ways are read alike. */
const WATCH: Limit = { percent: 10, leastMinutes: 5, minutes: 10 };
/** Chosen: four fifths of what is watched. */
const NOTE: Limit = { percent: 8, leastMinutes: 3, minutes: 8 };
/** Chosen: less than this is within what a controller's tuning does on a long ramp. */
const SLIGHT_PERCENT = 5;
/**
 * Chosen: no controller that regulates lets a ramp run half as fast again for a quarter of an hour;
 * either power is not being cut, or another rate was entered than the one meant. Both must be
 * reached.
 */
const ACT: Limit = { percent: 50, leastMinutes: 15, minutes: Infinity };

interface Earliness {
  readonly fasterPercent: number;
  readonly earlyMinutes: number;
}

const earliness = (climb: Climb): Earliness => ({
  fasterPercent: 100 * (climb.achievedCPerHour / climb.plannedCPerHour - 1),
  earlyMinutes: climb.dueMinutes - climb.tookMinutes,
});

/**
 * Whether the ramp made up for ground lost before: of what it gained, less than half put it ahead of
 * the plan. A controller that does not wait for the kiln drives such ramps by itself: worth a note
 * and no more.
 */
const isCatchingUp = ({ planned, actual }: Climb, { earlyMinutes }: Earliness): boolean =>
  (planned.endSeconds - actual.endSeconds) / SECONDS_PER_MINUTE <= earlyMinutes / 2;

const severityOf = (climb: Climb, early: Earliness, costHeatWork: boolean): Severity | null => {
  const isOff = (limit: Limit) => isBeyond(limit, early.fasterPercent, early.earlyMinutes);
  if (!isOff(NOTE)) return null;
  const isSlight = early.fasterPercent < SLIGHT_PERCENT;
  if (!isOff(WATCH) || isSlight || isCatchingUp(climb, early)) return 'note';
  return costHeatWork || isOff(ACT) ? 'act' : 'watch';
};

/** Did the kiln climb faster than the schedule asked? */
export const rampFast = defineScheduleDetector({
  id: 'ramp-fast',
  needs: ['trace'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, heatWork }) => {
    const climbs = ratedClimbs(schedule, alignment);
    if (climbs.length === 0) return notApplicable('no-rated-ramp');
    const missing = missingSegments(schedule, alignment, trace).map(({ segment }) => segment);
    const drafts = climbs.flatMap((climb): Draft[] => {
      // Run through at the next segment's rate: segment-missing tells of it.
      if (missing.includes(climb.segment)) return [];
      const { segment, actual, plannedCPerHour, achievedCPerHour } = climb;
      const early = earliness(climb);
      if (early.earlyMinutes <= endUncertaintyMinutes(trace, achievedCPerHour)) return [];
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const severity = severityOf(climb, early, costHeatWork);
      if (severity === null) return [];
      const limit = severity === 'note' ? NOTE : WATCH;
      return [
        {
          severity,
          evidence: [evidenceOf(actual)],
          figures: { segment, plannedCPerHour, achievedCPerHour, ...early },
          thresholds: { fasterPercent: limit.percent, earlyMinutes: limit.minutes },
          instead: ['power-stuck-on', 'segment-missing', 'schedule-suspect', 'clock-jump'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
