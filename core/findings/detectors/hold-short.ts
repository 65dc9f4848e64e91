import type { AlignedLeg, Alignment } from '../../model/document.ts';
import type { Evidence, Severity } from '../../model/finding.ts';
import type { Trace } from '../../model/trace.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { isAfterPeak, isTop, lengthMinutes } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';
import { minutesAtLevel } from '../time-at-level.ts';

/** A hold is beyond a limit if it is this much short, as a share or in minutes. */
interface Limit {
  readonly shortPercent: number;
  readonly leastMinutes: number;
  readonly shortMinutes: number;
}

/**
 * Chosen: a fifth of a soak, or three minutes, is what a cone at the top can begin to show. A share
 * counts only from two minutes, below which the ends of a hold are not known.
 */
const WATCH: Limit = { shortPercent: 20, leastMinutes: 2, shortMinutes: 3 };
/** Chosen: a little before what is watched, so that an estimate just inside it is still told. */
const NOTE: Limit = { shortPercent: 15, leastMinutes: 1.5, shortMinutes: 2.5 };
/** Chosen: a tenth off a hold moves its heat-work by a tenth, which no cone shows. */
const SLIGHT_PERCENT = 10;
/**
 * Chosen: after the peak the controller waits for the kiln to fall, so that the hold is entered
 * late as a rule, and what grows there does so over tens of degrees (1025–800 °C by the reference).
 */
const AFTER_PEAK_PERCENT = 50;
/** Chosen: either end of a hold lies between two readings. */
const SEEN_READINGS = 1.5;

/**
 * Within this of its level the record counts as holding (chosen: at cone 6, E about 700 kJ/mol
 * by the reference, 3 °C less slow the heat-work by a tenth), or within three times the noise or
 * the rounding where that is more.
 */
const LEVEL_TOLERANCE_C = 3;

interface Held {
  readonly segment: number;
  readonly plannedMinutes: number;
  readonly heldMinutes: number;
  readonly evidence: Evidence;
}

/** The climb of the same segment, if the kiln arrived. */
const arrivalOf = ({ legs }: Alignment, segment: number): AlignedLeg['actual'] =>
  legs.find(
    (leg) => leg.segment === segment && leg.kind !== 'hold' && leg.verdict !== 'not-reached',
  )?.actual ?? null;

/**
 * The longer of the two ways to see a hold: between the leg's boundaries, and by how long the
 * record stood at the level. Either alone can lose minutes to a boundary laid early or late, so
 * only what both miss is called missing.
 */
const heldMinutes = (leg: AlignedLeg, arrivedSeconds: number, samples: Trace): number => {
  const { noiseC, resolutionC } = samples.summary;
  const toleranceC = Math.max(LEVEL_TOLERANCE_C, 3 * noiseC, resolutionC);
  const byLegs = leg.actual === null ? 0 : lengthMinutes(leg.actual);
  const moment =
    leg.actual === null ? arrivedSeconds : (leg.actual.startSeconds + leg.actual.endSeconds) / 2;
  return Math.max(byLegs, minutesAtLevel(samples, moment, leg.planned.endC, toleranceC) ?? 0);
};

const holdsOf = (alignment: Alignment, samples: Trace): Held[] =>
  alignment.legs.flatMap((leg) => {
    const plannedMinutes = lengthMinutes(leg.planned);
    if (leg.segment === null || leg.kind !== 'hold' || plannedMinutes <= 0) return [];
    const arrival = arrivalOf(alignment, leg.segment);
    if (arrival === null) return [];
    const fromSeconds = leg.actual?.startSeconds ?? arrival.endSeconds;
    const toSeconds = leg.actual?.endSeconds ?? arrival.endSeconds;
    return {
      segment: leg.segment,
      plannedMinutes,
      heldMinutes: heldMinutes(leg, arrival.endSeconds, samples),
      evidence: { fromSeconds, toSeconds, celsius: leg.planned.endC },
    };
  });

interface Shortage {
  readonly shortMinutes: number;
  readonly shortPercent: number;
}

const isBeyond = (limit: Limit, { shortMinutes, shortPercent }: Shortage): boolean =>
  shortMinutes >= limit.shortMinutes ||
  (shortPercent >= limit.shortPercent && shortMinutes >= limit.leastMinutes);

interface Setting {
  readonly afterPeak: boolean;
  readonly intervalMinutes: number;
  /** The hold is the top's, and the heat-work missed its cone. */
  readonly costHeatWork: boolean;
}

/** `act` where a short hold at the top came with heat-work that missed its cone. */
const severityOf = (short: Shortage, setting: Setting): Severity | null => {
  if (!isBeyond(NOTE, short)) return null;
  const leastPercent = setting.afterPeak ? AFTER_PEAK_PERCENT : SLIGHT_PERCENT;
  const isSeen = short.shortMinutes > SEEN_READINGS * setting.intervalMinutes;
  if (!isBeyond(WATCH, short) || short.shortPercent < leastPercent || !isSeen) return 'note';
  return setting.costHeatWork ? 'act' : 'watch';
};

/** Did a hold end before its time, though the kiln had arrived? */
export const holdShort = defineScheduleDetector({
  id: 'hold-short',
  needs: ['samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, samples, heatWork }) => {
    const holds = holdsOf(alignment, samples);
    if (holds.length === 0) return notApplicable('no-hold');
    const intervalMinutes = samples.summary.medianIntervalSeconds / SECONDS_PER_MINUTE;
    const drafts = holds.flatMap(({ segment, evidence, ...times }): Draft[] => {
      const shortMinutes = times.plannedMinutes - times.heldMinutes;
      const short = { shortMinutes, shortPercent: (100 * shortMinutes) / times.plannedMinutes };
      const severity = severityOf(short, {
        afterPeak: isAfterPeak(schedule, segment),
        intervalMinutes,
        costHeatWork: isTop(schedule, segment) && certainlyMissed(heatWork),
      });
      if (severity === null) return [];
      const limit = severity === 'note' ? NOTE : WATCH;
      return [
        {
          severity,
          evidence: [evidence],
          figures: { segment, ...times, ...short },
          thresholds: { shortPercent: limit.shortPercent, shortMinutes: limit.shortMinutes },
          instead: ['ended-early', 'power-interrupted', 'ramp-slow', 'schedule-suspect'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
