import type { AlignedLeg, Alignment, Overshoot } from '../../model/document.ts';
import type { Evidence, Severity } from '../../model/finding.ts';
import type { Schedule } from '../../model/schedule.ts';
import type { Trace, TraceSummary } from '../../model/trace.ts';
import { lowerBound } from '../../numeric/search.ts';
import { quantile } from '../../numeric/statistics.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { endsEarly } from '../early-end.ts';
import { isAfterPeak, isTop, lengthMinutes, type Course } from '../legs.ts';
import { missingSegments } from '../missing-segments.ts';
import { isBeyond, type Limit } from '../limit.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';
import { minutesAtLevel, nearestToLevel } from '../time-at-level.ts';

/**
 * Chosen: a fifth of a soak, or three minutes, is what a cone at the top can begin to show. A share
 * counts only from two minutes, below which the ends of a hold are not known.
 */
const WATCH: Limit = { percent: 20, leastMinutes: 2, minutes: 3 };
/** Chosen: a little before what is watched, so that an estimate just inside it is still told. */
const NOTE: Limit = { percent: 15, leastMinutes: 1.5, minutes: 2.5 };
/** Chosen: a tenth off a hold moves its heat-work by a tenth, which no cone shows. */
const SLIGHT_PERCENT = 10;
/**
 * Chosen: after the peak the controller waits for the kiln to fall, so that the hold is entered
 * late as a rule, and what grows there does so over tens of degrees (1025–800 °C by the reference).
 */
const AFTER_PEAK_PERCENT = 50;
/** Chosen: either end of a hold lies between two readings. */
const SEEN_READINGS = 1.5;
/** Chosen: fewer readings than this within a hold say nothing of how long it was. */
const FEWEST_READINGS = 4;

/**
 * Within this of its level the record counts as holding (chosen: at cone 6, E about 700 kJ/mol
 * by the reference, 3 °C less slow the heat-work by a tenth), or within three times the noise or
 * the rounding where that is more.
 */
const LEVEL_TOLERANCE_C = 3;

/**
 * A short leg that moves by more than this between its outer tenths is a peak that the alignment
 * took for a hold (chosen); a long one may creep to its level.
 */
const FLAT_DELTA_C = 8;
const SHORT_LEG_MINUTES = 20;
/** The level is looked for this far around a hold's leg: nearly all boundaries lie within 6 min. */
const AROUND_SECONDS = 6 * SECONDS_PER_MINUTE;
/** Two measures of one hold that differ by more than this are not of the same thing (chosen). */
const AGREE_MINUTES = 4;

interface Held {
  readonly segment: number;
  readonly plannedMinutes: number;
  readonly heldMinutes: number;
  readonly evidence: Evidence;
}

/** The climb or fall of the same segment, if the kiln arrived. */
const arrivalOf = ({ legs }: Alignment, segment: number): AlignedLeg['actual'] =>
  legs.find(
    (leg) => leg.segment === segment && leg.kind !== 'hold' && leg.verdict !== 'not-reached',
  )?.actual ?? null;

/** How long the hold's leg is, if the record stood still in it: a leg laid over a peak does not. */
const minutesByLeg = ({ actual }: AlignedLeg, { atSeconds, smoothC }: Trace): number | null => {
  if (actual === null) return null;
  const minutes = lengthMinutes(actual);
  if (minutes >= SHORT_LEG_MINUTES) return minutes;
  const from = lowerBound(atSeconds, actual.startSeconds);
  const readings = smoothC.subarray(from, lowerBound(atSeconds, actual.endSeconds) + 1);
  const isFlat = quantile(readings, 0.9) - quantile(readings, 0.1) <= FLAT_DELTA_C;
  return isFlat ? minutes : null;
};

/** How long the record stood at the level in or near the hold's leg. */
const minutesByLevel = (leg: AlignedLeg, arrival: Course, samples: Trace): number | null => {
  const { noiseC, resolutionC } = samples.summary;
  const toleranceC = Math.max(LEVEL_TOLERANCE_C, 3 * noiseC, resolutionC);
  const from = (leg.actual?.startSeconds ?? arrival.endSeconds) - AROUND_SECONDS;
  const to = (leg.actual?.endSeconds ?? arrival.endSeconds) + AROUND_SECONDS;
  const levelC = leg.planned.endC;
  const moment = nearestToLevel(samples, from, to, levelC);
  return moment === null ? null : minutesAtLevel(samples, moment, levelC, toleranceC);
};

/**
 * What a hold lasted. Its leg tends to take in a little of what comes before and after, the time at
 * the level to leave out its slow ends, so the two are averaged where they agree; where not, the
 * longer is believed, so that only what both miss is called missing. Where the record neither stood
 * still nor stood at the level, it arrived and turned at once.
 */
const heldMinutes = (leg: AlignedLeg, arrival: Course, samples: Trace): number => {
  const byLeg = minutesByLeg(leg, samples);
  const byLevel = minutesByLevel(leg, arrival, samples);
  if (byLeg === null || byLevel === null) return byLeg ?? byLevel ?? 0;
  const agree = Math.abs(byLeg - byLevel) <= AGREE_MINUTES;
  return agree ? (byLeg + byLevel) / 2 : Math.max(byLeg, byLevel);
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
      heldMinutes: heldMinutes(leg, arrival, samples),
      evidence: { fromSeconds, toSeconds, celsius: leg.planned.endC },
    };
  });

interface Shortage {
  readonly shortMinutes: number;
  readonly shortPercent: number;
}

interface Setting {
  readonly afterPeak: boolean;
  readonly intervalMinutes: number;
  /** The hold is the top's, and the heat-work missed its cone. */
  readonly costHeatWork: boolean;
}

/** `act` where a short hold at the top came with heat-work that missed its cone. */
const severityOf = (short: Shortage, setting: Setting): Severity | null => {
  const isOff = (limit: Limit) => isBeyond(limit, short.shortPercent, short.shortMinutes);
  if (!isOff(NOTE)) return null;
  const leastPercent = setting.afterPeak ? AFTER_PEAK_PERCENT : SLIGHT_PERCENT;
  const isSeen = short.shortMinutes > SEEN_READINGS * setting.intervalMinutes;
  if (!isOff(WATCH) || short.shortPercent < leastPercent || !isSeen) return 'note';
  return setting.costHeatWork ? 'act' : 'watch';
};

/** Time spent hotter than the level is not missing from a hold; the overshoot speaks of it. */
const minutesAbove = (overshoots: readonly Overshoot[], segment: number): number =>
  overshoots
    .filter((over) => over.segment === segment)
    .reduce((sum, { aboveForSeconds }) => sum + aboveForSeconds / SECONDS_PER_MINUTE, 0);

/** Segments of which an early end of the firing, or a segment passed over, is told already. */
const toldElsewhere = (
  schedule: Schedule,
  alignment: Alignment,
  trace: TraceSummary,
): ReadonlySet<number | null> =>
  new Set([
    ...(endsEarly(alignment, trace)?.legs ?? []).map(({ segment }) => segment),
    ...missingSegments(schedule, alignment, trace).map(({ segment }) => segment),
  ]);

/** Did a hold end before its time, though the kiln had arrived? */
export const holdShort = defineScheduleDetector({
  id: 'hold-short',
  needs: ['samples', 'overshoots'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, samples, overshoots, heatWork }) => {
    const holds = holdsOf(alignment, samples);
    if (holds.length === 0) return notApplicable('no-hold');
    const intervalMinutes = samples.summary.medianIntervalSeconds / SECONDS_PER_MINUTE;
    const seen = holds.filter((hold) => hold.plannedMinutes >= FEWEST_READINGS * intervalMinutes);
    if (seen.length === 0) return notApplicable('readings-too-coarse');
    const told = toldElsewhere(schedule, alignment, samples.summary);
    const drafts = seen.flatMap(({ segment, evidence, ...times }): Draft[] => {
      const shortMinutes = times.plannedMinutes - times.heldMinutes;
      if (told.has(segment) || shortMinutes <= minutesAbove(overshoots, segment)) return [];
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
          thresholds: { shortPercent: limit.percent, shortMinutes: limit.minutes },
          instead: ['ended-early', 'power-interrupted', 'ramp-slow', 'schedule-suspect'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
