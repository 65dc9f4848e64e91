import type { AlignedLeg, Alignment } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import type { Trace } from '../../model/trace.ts';
import { lowerBound } from '../../trace/search.ts';
import { median, quantile } from '../../trace/statistics.ts';
import { celsius } from '../../units.ts';
import { foundAny, notApplicable, type Draft } from '../detector.ts';
import { isTop, type Course } from '../legs.ts';
import { certainlyMissed } from '../off-target.ts';
import { defineScheduleDetector } from '../schedule-detector.ts';

/**
 * Chosen: as much as an overshoot is watched from. At cone 6 (E about 700 kJ/mol, reference) a hold
 * 8 °C off its level works a third faster or a quarter slower.
 */
const WATCH_DELTA_C = 8;
/** Chosen: the error that a working controller stays well inside once it has settled. */
const NOTE_DELTA_C = 5;
/** … or this many times the noise, where that is more. */
const NOTE_SIGMAS = 3;

/** The first and last of a hold belong to arriving and leaving (chosen: a fifth and a twentieth). */
const SETTLING_SHARE = 0.2;
const LEAVING_SHARE = 0.05;
/** Fewer readings than this say nothing about a hold's level (chosen). */
const FEWEST_READINGS = 5;

interface Hold {
  readonly segment: number;
  readonly levelC: number;
  readonly course: Course;
  /** Middle of the hold less its level. */
  readonly offDeltaC: number;
  /** From the coolest to the hottest twentieth of the hold. */
  readonly wanderDeltaC: number;
}

const readingsOf = ({ atSeconds, smoothC }: Trace, course: Course): Float64Array => {
  const length = course.endSeconds - course.startSeconds;
  const from = lowerBound(atSeconds, course.startSeconds + SETTLING_SHARE * length);
  const to = lowerBound(atSeconds, course.endSeconds - LEAVING_SHARE * length);
  return smoothC.subarray(from, Math.max(from, to));
};

const isUnreached = ({ legs }: Alignment, segment: number): boolean =>
  legs.some((leg) => leg.segment === segment && leg.verdict === 'not-reached');

const measured = (leg: AlignedLeg, alignment: Alignment, samples: Trace): Hold[] => {
  const { segment, kind, planned, actual } = leg;
  // Where the kiln never arrived, the climb is to blame and peak-not-reached speaks of it.
  if (segment === null || kind !== 'hold' || actual === null) return [];
  if (isUnreached(alignment, segment)) return [];
  const readings = readingsOf(samples, actual);
  if (readings.length < FEWEST_READINGS) return [];
  return [
    {
      segment,
      levelC: planned.endC,
      course: actual,
      offDeltaC: median(readings) - planned.endC,
      wanderDeltaC: quantile(readings, 0.95) - quantile(readings, 0.05),
    },
  ];
};

/** `act` where a hold at the top was off and the heat-work missed its cone. */
const severityOf = (
  worstDeltaC: number,
  noteDeltaC: number,
  costHeatWork: boolean,
): Severity | null => {
  if (worstDeltaC < noteDeltaC) return null;
  if (worstDeltaC < Math.max(WATCH_DELTA_C, noteDeltaC)) return 'note';
  return costHeatWork ? 'act' : 'watch';
};

/** Did a hold keep its level? */
export const holdDrift = defineScheduleDetector({
  id: 'hold-drift',
  needs: ['samples'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, samples, heatWork }) => {
    const holds = alignment.legs.flatMap((leg) => measured(leg, alignment, samples));
    if (holds.length === 0) return notApplicable('no-hold');
    const { noiseC, resolutionC } = samples.summary;
    const noteDeltaC = Math.max(NOTE_DELTA_C, NOTE_SIGMAS * noiseC, resolutionC);
    const drafts = holds.flatMap(({ segment, levelC, course, ...figures }): Draft[] => {
      const worstDeltaC = Math.max(Math.abs(figures.offDeltaC), figures.wanderDeltaC);
      const costHeatWork = isTop(schedule, segment) && certainlyMissed(heatWork);
      const severity = severityOf(worstDeltaC, noteDeltaC, costHeatWork);
      if (severity === null) return [];
      const limitDeltaC = severity === 'note' ? noteDeltaC : Math.max(WATCH_DELTA_C, noteDeltaC);
      return [
        {
          severity,
          evidence: [
            {
              fromSeconds: course.startSeconds,
              toSeconds: course.endSeconds,
              celsius: celsius(levelC + figures.offDeltaC),
            },
          ],
          figures: { segment, levelC, ...figures },
          thresholds: { offDeltaC: limitDeltaC, wanderDeltaC: limitDeltaC },
          instead: ['overshoot', 'ceiling-near', 'elements-weak', 'sensor-lag', 'power-stuck-on'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
