import type { Alignment } from '../../model/document.ts';
import type { FindingId, Severity } from '../../model/finding.ts';
import { interpolate } from '../../numeric/search.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft, type Figures } from '../detector.ts';
import { endUncertaintyMinutes, evidenceOf, isTop, ratedClimbs, type Climb } from '../legs.ts';
import { isBeyond, reached, type Limit } from '../limit.ts';
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

/** How far below the plan a climb began, °C. */
const behindC = ({ planned }: Alignment, { actual }: Climb): number =>
  interpolate(
    Float64Array.from(planned, ({ atSeconds }) => atSeconds),
    Float64Array.from(planned, ({ celsius }) => celsius),
    actual.startSeconds,
  ) - actual.startC;

/** Less than this is no ground to make up (chosen: what a working controller is off by). */
const LEAST_BEHIND_C = 5;

/** What a fast climb is put down to; what it made up is not time by which it was early. */
const judged = (
  climb: Climb,
  early: Earliness,
  alignment: Alignment,
): { figures: Figures; instead: readonly FindingId[] } => {
  const behindDeltaC = behindC(alignment, climb);
  const { fasterPercent, earlyMinutes } = early;
  if (!isCatchingUp(climb, early) || behindDeltaC < LEAST_BEHIND_C) {
    return {
      figures: { ...early },
      instead: ['power-stuck-on', 'segment-missing', 'schedule-suspect', 'clock-jump'],
    };
  }
  return {
    figures: { fasterPercent, madeUpMinutes: earlyMinutes, behindDeltaC },
    instead: ['ramp-slow', 'segment-missing', 'schedule-suspect'],
  };
};

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
      const { figures, instead } = judged(climb, early, alignment);
      return [
        {
          severity,
          evidence: [evidenceOf(actual)],
          figures: { segment, plannedCPerHour, achievedCPerHour, ...figures },
          thresholds: reached(figures, {
            fasterPercent: limit.percent,
            earlyMinutes: limit.minutes,
            madeUpMinutes: limit.minutes,
          }),
          instead,
        },
      ];
    });
    return foundAny(drafts);
  },
});
