import type { AlignedLeg, Alignment } from '../../model/document.ts';
import type { Evidence, Severity } from '../../model/finding.ts';
import type { Trace } from '../../model/trace.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { isTop, lengthMinutes } from '../legs.ts';
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
/** Chosen: a twentieth off a hold moves its heat-work by a twentieth, which no cone shows. */
const SLIGHT_PERCENT = 5;

/**
 * Within this of its level the record counts as holding (chosen: at cone 6, E about
 * 700 kJ/mol by the reference, 3 °C less slow the heat-work by a tenth), or within three times the noise or the rounding where that is more.
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

const isBeyond = (limit: Limit, shortMinutes: number, shortPercent: number): boolean =>
  shortMinutes >= limit.shortMinutes ||
  (shortPercent >= limit.shortPercent && shortMinutes >= limit.leastMinutes);

/** `act` where a short hold at the top came with heat-work that missed its cone. */
const severityOf = (
  shortMinutes: number,
  shortPercent: number,
  costHeatWork: boolean,
): Severity | null => {
  if (!isBeyond(NOTE, shortMinutes, shortPercent)) return null;
  const isSlight = shortPercent < SLIGHT_PERCENT;
  if (!isBeyond(WATCH, shortMinutes, shortPercent) || isSlight) return 'note';
  return costHeatWork ? 'act' : 'watch';
};

/** Did a hold end before its time, though the kiln had arrived? */
export const holdShort = defineScheduleDetector({
  id: 'hold-short',
  needs: ['samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, samples, heatWork }) => {
    const holds = holdsOf(alignment, samples);
    if (holds.length === 0) return notApplicable('no-hold');
    const drafts = holds.flatMap((hold): Draft[] => {
      const { segment, plannedMinutes, evidence } = hold;
      const shortMinutes = plannedMinutes - hold.heldMinutes;
      const shortPercent = (100 * shortMinutes) / plannedMinutes;
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const severity = severityOf(shortMinutes, shortPercent, costHeatWork);
      if (severity === null) return [];
      const limit = severity === 'note' ? NOTE : WATCH;
      return [
        {
          severity,
          evidence: [evidence],
          figures: {
            segment,
            plannedMinutes,
            heldMinutes: hold.heldMinutes,
            shortMinutes,
            shortPercent,
          },
          thresholds: { shortPercent: limit.shortPercent, shortMinutes: limit.shortMinutes },
          instead: ['ended-early', 'power-interrupted', 'ramp-slow', 'schedule-suspect'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
