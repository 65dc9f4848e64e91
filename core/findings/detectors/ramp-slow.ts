import type { FindingId, Severity } from '../../model/finding.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft, type Figures } from '../detector.ts';
import { minutesFallen } from '../falls.ts';
import {
  endUncertaintyMinutes,
  evidenceOf,
  isTop,
  ranAtRateOfNext,
  ratedClimbs,
  shortOfTargetC,
  type Climb,
} from '../legs.ts';
import { isBeyond, reached, type Limit } from '../limit.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/**
 * Chosen: a controller that keeps its ramps holds them to a few per cent, and a kiln that begins to
 * lose its elements shows it first as 10 % or ten minutes on the last ramp. Slower counts only with
 * a few minutes' delay, since the end of a short ramp is not known better than that.
 */
const WATCH: Limit = { percent: 10, leastMinutes: 5, minutes: 10 };
/** Chosen: four fifths of what is watched, so that the first signs are told and kept. */
const NOTE: Limit = { percent: 8, leastMinutes: 3, minutes: 8 };
/** Chosen: less than this is within what a controller's tuning does on a long ramp. */
const SLIGHT_PERCENT = 5;
/** Chosen: an hour more is paid for in power, and moves the unloading. Both must be reached. */
const ACT: Limit = { percent: 10, leastMinutes: 60, minutes: Infinity };

interface Lateness {
  readonly slowerPercent: number;
  readonly lateMinutes: number;
}

const lateness = ({ tookMinutes, dueMinutes }: Climb): Lateness => ({
  slowerPercent: 100 * (1 - dueMinutes / tookMinutes),
  lateMinutes: tookMinutes - dueMinutes,
});

/** `act` where the slowness cost an hour, or came with heat-work that missed its cone. */
const severityOf = (late: Lateness, costHeatWork: boolean): Severity | null => {
  const isOff = (limit: Limit) => isBeyond(limit, late.slowerPercent, late.lateMinutes);
  if (!isOff(NOTE)) return null;
  if (!isOff(WATCH) || late.slowerPercent < SLIGHT_PERCENT) return 'note';
  return costHeatWork || isOff(ACT) ? 'act' : 'watch';
};

/** A slow climb that was not slow for want of power is nothing to act on. */
const atMostWatch = (severity: Severity | null): Severity | null =>
  severity === 'act' ? 'watch' : severity;

const INSTEAD = [
  'elements-weak',
  'element-lost',
  'heavy-load',
  'supply-varies',
  'segment-missing',
  'schedule-suspect',
] as const satisfies readonly FindingId[];

/** What a climb's lateness comes to, and what it is put down to first. */
interface Judged {
  readonly severity: Severity | null;
  readonly figures: Figures;
  readonly instead: readonly FindingId[];
}

/**
 * A climb in which the reading fell and was regained is judged by its remaining time: what was lost
 * in between is no slowness, and alone it is nothing that elements explain.
 */
const judgedFallen = (climb: Climb, fallenMinutes: number, costHeatWork: boolean): Judged => {
  const rest = { ...climb, tookMinutes: climb.tookMinutes - fallenMinutes };
  const own = severityOf(lateness(rest), costHeatWork);
  const wasSlowToo = own === 'act' || own === 'watch';
  const otherwiseCPerHour = (climb.achievedCPerHour * climb.tookMinutes) / rest.tookMinutes;
  return {
    severity: wasSlowToo ? own : atMostWatch(severityOf(lateness(climb), costHeatWork)),
    figures: { fallenMinutes, otherwiseCPerHour },
    instead: ['power-interrupted', 'sensor-open', ...(wasSlowToo ? INSTEAD : [])],
  };
};

/** A climb at just the next segment's rate is likelier an entry than a loss of power. */
const judgedAsNext = (climb: Climb, nextCPerHour: number, costHeatWork: boolean): Judged => ({
  severity: atMostWatch(severityOf(lateness(climb), costHeatWork)),
  figures: { nextCPerHour },
  instead: ['schedule-suspect', ...INSTEAD.filter((id) => id !== 'schedule-suspect')],
});

const judged = (
  climb: Climb,
  next: Climb | undefined,
  fallenMinutes: number,
  costHeatWork: boolean,
): Judged => {
  if (fallenMinutes > 0) return judgedFallen(climb, fallenMinutes, costHeatWork);
  if (next && ranAtRateOfNext(climb, next)) {
    return judgedAsNext(climb, next.plannedCPerHour, costHeatWork);
  }
  return { severity: severityOf(lateness(climb), costHeatWork), figures: {}, instead: INSTEAD };
};

/**
 * How much later than planned the kiln came to where a climb ended. One that stopped short of its
 * target is held against the moment at which the plan was at that temperature, not at the target.
 */
const behindPlanMinutes = ({ planned, actual, plannedCPerHour }: Climb): number => {
  const leftSeconds = ((planned.endC - actual.endC) / plannedCPerHour) * SECONDS_PER_HOUR;
  return (actual.endSeconds - planned.endSeconds + leftSeconds) / SECONDS_PER_MINUTE;
};

/** Where a climb that ended short of its target came to. */
const endOf = (climb: Climb): Figures =>
  shortOfTargetC(climb) === null ? {} : { cameToC: climb.actual.endC };

/** Did the kiln climb more slowly than the schedule asked? */
export const rampSlow = defineScheduleDetector({
  id: 'ramp-slow',
  needs: ['trace', 'samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, trace, samples, heatWork }) => {
    const climbs = ratedClimbs(schedule, alignment);
    if (climbs.length === 0) return notApplicable('no-rated-ramp');
    const drafts = climbs.flatMap((climb, i): Draft[] => {
      const { segment, actual, plannedCPerHour, achievedCPerHour } = climb;
      const late = lateness(climb);
      if (late.lateMinutes <= endUncertaintyMinutes(trace, achievedCPerHour)) return [];
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const fallenMinutes = minutesFallen(samples, actual);
      const { severity, figures, instead } = judged(
        climb,
        climbs[i + 1],
        fallenMinutes,
        costHeatWork,
      );
      if (severity === null) return [];
      const limit = severity === 'note' ? NOTE : WATCH;
      const rates = { plannedCPerHour, achievedCPerHour };
      return [
        {
          severity,
          evidence: [evidenceOf(actual)],
          figures: {
            segment,
            ...rates,
            ...late,
            behindPlanMinutes: behindPlanMinutes(climb),
            ...endOf(climb),
            ...figures,
          },
          thresholds: reached(
            { ...late },
            { slowerPercent: limit.percent, lateMinutes: limit.minutes },
          ),
          instead,
        },
      ];
    });
    return foundAny(drafts);
  },
});
