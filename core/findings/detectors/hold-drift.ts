import type { Alignment } from '../../model/document.ts';
import type { Severity } from '../../model/finding.ts';
import type { Trace } from '../../model/trace.ts';
import { lowerBound } from '../../numeric/search.ts';
import { median, quantile } from '../../numeric/statistics.ts';
import { celsius, SECONDS_PER_MINUTE } from '../../units.ts';
import { clear, foundAny, notApplicable, type Draft } from '../detector.ts';
import { ranAway } from '../heated-on.ts';
import { isTop, lengthMinutes, type Course } from '../legs.ts';
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

/**
 * Chosen: nearly every boundary between legs is known to six minutes, so that much at either end
 * may belong to arriving and leaving …
 */
const END_SECONDS = 6 * SECONDS_PER_MINUTE;
/** … but a short hold loses no more than this share at either end. */
const END_SHARE = 0.25;
/** A shorter hold may be taken for its neighbours, and their temperatures for its own (chosen). */
const SHORTEST_MINUTES = 10;
/** A hold shorter than this has no time to wander (chosen). */
const SHORTEST_WANDER_MINUTES = 20;
/** Fewer readings than this say nothing about a hold's level (chosen). */
const FEWEST_READINGS = 5;

/** A hold that ran, long enough for its ends to be told from its neighbours. */
interface HoldLeg {
  readonly segment: number;
  readonly levelC: number;
  readonly course: Course;
  /** Some leg of its segment never got to the level. */
  readonly isUnreached: boolean;
}

interface Hold extends HoldLeg {
  /** Middle of the hold less its level. */
  readonly offDeltaC: number;
  /** From the coolest to the hottest twentieth of the hold; null if it was too short to wander. */
  readonly wanderDeltaC: number | null;
}

/** A hold's own readings, up to the moment the heat went off if that was sooner. */
const readingsOf = ({ atSeconds, smoothC, summary }: Trace, course: Course): Float64Array => {
  const endSeconds = Math.min(course.endSeconds, summary.offSeconds ?? Infinity);
  const trim = Math.min(END_SECONDS, END_SHARE * (endSeconds - course.startSeconds));
  const from = lowerBound(atSeconds, course.startSeconds + trim);
  const to = lowerBound(atSeconds, endSeconds - trim);
  return smoothC.subarray(from, Math.max(from, to));
};

const wanderOf = (readings: Float64Array, course: Course): number | null =>
  lengthMinutes(course) < SHORTEST_WANDER_MINUTES
    ? null
    : quantile(readings, 0.95) - quantile(readings, 0.05);

const isUnreached = ({ legs }: Alignment, segment: number): boolean =>
  legs.some((leg) => leg.segment === segment && leg.verdict === 'not-reached');

const holdLegs = (alignment: Alignment): HoldLeg[] =>
  alignment.legs.flatMap(({ segment, kind, planned, actual }) => {
    if (segment === null || kind !== 'hold' || actual === null) return [];
    const minutes = Math.min(lengthMinutes(actual), lengthMinutes(planned));
    if (minutes < SHORTEST_MINUTES) return [];
    const levelC = planned.endC;
    return { segment, levelC, course: actual, isUnreached: isUnreached(alignment, segment) };
  });

/**
 * Where the kiln never climbed to the level the climb is to blame, and peak-not-reached speaks of it.
 * A hold that stood hotter than its level has nobody else to tell of it.
 */
const hasArrived = ({ isUnreached, offDeltaC }: Hold): boolean => !isUnreached || offDeltaC > 0;

const measured = (leg: HoldLeg, samples: Trace): Hold[] => {
  const readings = readingsOf(samples, leg.course);
  if (readings.length < FEWEST_READINGS) return [];
  const offDeltaC = median(readings) - leg.levelC;
  return [{ ...leg, offDeltaC, wanderDeltaC: wanderOf(readings, leg.course) }];
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
  needs: ['samples', 'overshoots'],
  wants: ['heatWork'],
  detect: ({ schedule, alignment, samples, overshoots, heatWork }) => {
    const legs = holdLegs(alignment);
    if (legs.length === 0) return notApplicable('no-hold');
    const all = legs.flatMap((leg) => measured(leg, samples));
    if (all.length === 0) return notApplicable('readings-too-coarse');
    const arrived = all.filter(hasArrived);
    if (arrived.length === 0) return notApplicable('no-hold');
    const holds = arrived.filter(
      // A kiln that heated on through its hold went past its target: the overshoot tells of it.
      ({ segment, offDeltaC }) => offDeltaC <= 0 || !ranAway(alignment, overshoots, segment),
    );
    if (holds.length === 0) return clear('told-by-another');
    const { noiseC, resolutionC } = samples.summary;
    const noteDeltaC = Math.max(NOTE_DELTA_C, NOTE_SIGMAS * noiseC, resolutionC);
    const drafts = holds.flatMap((hold): Draft[] => {
      const { segment, levelC, course, offDeltaC, wanderDeltaC } = hold;
      const worstDeltaC = Math.max(Math.abs(offDeltaC), wanderDeltaC ?? 0);
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
              celsius: celsius(levelC + offDeltaC),
            },
          ],
          figures: {
            segment,
            levelC,
            offDeltaC,
            ...(wanderDeltaC === null ? {} : { wanderDeltaC }),
          },
          thresholds: { offDeltaC: limitDeltaC, wanderDeltaC: limitDeltaC },
          instead: ['overshoot', 'ceiling-near', 'elements-weak', 'sensor-lag', 'power-stuck-on'],
        },
      ];
    });
    return foundAny(drafts);
  },
});
