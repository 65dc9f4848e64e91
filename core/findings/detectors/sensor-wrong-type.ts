import { endPoint } from '../../cones/arrhenius.ts';
import { kineticsOf } from '../../cones/cone-kinetics.ts';
import { COUPLE_TYPES } from '../../model/options.ts';
import { interpolate } from '../../numeric/search.ts';
import { SECONDS_PER_HOUR, celsiusPerHour, seconds } from '../../units.ts';
import { clear, defineDetector, found, notApplicable, type Given } from '../detector.ts';
import {
  coldEndC,
  distanceAtShiftC,
  mistakes,
  nearestToPlan,
  rereadC,
  thinned,
  type Course,
  type Mistake,
} from '../reread.ts';

/** Chosen: as far as a kiln that follows its plan, or waits for itself a little, runs beside it. */
const PLAUSIBLE_DELTA_C = 40;
/** Chosen: read as it was, the record must be so many times further off than read again. */
const TIMES_WORSE = 3;
/** Chosen: nearer than this to a plan is no better than this. */
const CERTAIN_DELTA_C = 20;
/** Chosen: without a schedule only the peak can be held against the cone, so it must be far off. */
const FAR_OFF_DELTA_C = 250;
/** Chosen: a climb that was cut short is over sooner; one to a wrong reading takes as long as any. */
const LEAST_CLIMB_HOURS = 3;
/** Moments at which record and plan are compared. */
const PLAN_MOMENTS = 100;
/** The chart’s middle rate. */
const CHART_RATE = celsiusPerHour(60);

type Facts = Given<'samples' | 'options', 'schedule' | 'alignment'>;

interface Likely extends Mistake {
  readonly offDeltaC: number;
  readonly peakC: number;
}

const likeliest = <Kind extends Likely>(likely: readonly Kind[]): Kind | undefined =>
  [...likely].sort((a, b) => a.offDeltaC - b.offDeltaC)[0];

/** The climb as planned, at even moments up to the hottest planned one; null without a plan. */
const plannedClimb = ({ alignment }: Facts): { plan: Course; topC: number } | null => {
  if (alignment === null || alignment.planned.length < 2) return null;
  const at = alignment.planned.map(({ atSeconds }) => atSeconds);
  const celsiusOf = alignment.planned.map((point) => point.celsius);
  const topC = Math.max(...celsiusOf);
  const from = at[0]!;
  const to = at[celsiusOf.findIndex((value) => value === topC)]!;
  const moments = Array.from(
    { length: PLAN_MOMENTS },
    (_, i) => from + ((to - from) * i) / PLAN_MOMENTS,
  );
  const plannedC = moments.map((moment) => interpolate(at, celsiusOf, moment));
  return { plan: { atSeconds: moments, celsius: plannedC }, topC };
};

/**
 * Read again as other wires, which one follows the plan, and how far the record as it stands is from
 * the plan laid likewise? Null where it came to the planned top as it stands.
 */
const byPlan = (facts: Facts, { plan, topC }: { plan: Course; topC: number }, coldC: number) => {
  const { peakC } = facts.samples.summary;
  if (Math.abs(peakC - topC) <= PLAUSIBLE_DELTA_C) return null;
  const record = thinned(facts.samples);
  const likely = mistakes(facts.options.couple?.type).flatMap((mistake) => {
    const reread = (readC: number) => rereadC(mistake, readC, coldC);
    if (!(Math.abs(reread(peakC) - topC) <= PLAUSIBLE_DELTA_C)) return [];
    const again = { ...record, celsius: Array.from(record.celsius, reread) };
    const { deltaC, shiftSeconds } = nearestToPlan(again, plan);
    const rawDeltaC = distanceAtShiftC(record, plan, shiftSeconds);
    return [{ ...mistake, offDeltaC: deltaC, rawDeltaC, peakC: reread(peakC) }];
  });
  return likeliest(likely) ?? null;
};

/** The same with nothing but a cone or a top to go by: the peak alone. */
const byPeak = ({ samples, options }: Facts, meantC: number, coldC: number) => {
  const { summary } = samples;
  const likely = mistakes(options.couple?.type).map((mistake): Likely => {
    const peakC = rereadC(mistake, summary.peakC, coldC);
    return { ...mistake, peakC, offDeltaC: Math.abs(peakC - meantC) };
  });
  return {
    rawDeltaC: Math.abs(summary.peakC - meantC),
    best: likeliest(likely.filter(({ offDeltaC }) => offDeltaC <= PLAUSIBLE_DELTA_C)),
  };
};

/** How long a climb at full power takes is the kiln's to say, so no plan tells when it is where. */
const climbsAtFullPower = ({ schedule }: Facts): boolean =>
  schedule !== null && schedule.segments.some(({ rateCPerHour }) => rateCPerHour === 'full');

const climbHours = ({ samples: { summary } }: Facts): number =>
  (summary.peakAtSeconds - (summary.startSeconds ?? 0)) / SECONDS_PER_HOUR;

const endPointC = ({ options, schedule }: Facts): number | null => {
  const cone = options.cone ?? schedule?.cone ?? null;
  if (cone === null) return null;
  return endPoint(kineticsOf(options.coneType ?? 'self-supporting', cone), CHART_RATE);
};

const told = ({ samples: { summary } }: Facts, best: Likely, rawDeltaC: number, byPlan: boolean) =>
  found({
    severity: byPlan ? 'act' : 'watch',
    evidence: [
      {
        fromSeconds: summary.startSeconds ?? seconds(0),
        toSeconds: summary.peakAtSeconds,
        celsius: summary.peakC,
      },
    ],
    figures: {
      rereadPeakC: best.peakC,
      peakC: summary.peakC,
      asReadDeltaC: rawDeltaC,
      rereadDeltaC: best.offDeltaC,
      readAs: COUPLE_TYPES.indexOf(best.readAs),
      probably: COUPLE_TYPES.indexOf(best.wire),
    },
    thresholds: { rereadDeltaC: PLAUSIBLE_DELTA_C },
    instead: ['ended-early', 'peak-not-reached', 'sensor-drift'],
  });

/** Does the record make sense only as another type of couple than the one it was read as? */
export const sensorWrongType = defineDetector({
  id: 'sensor-wrong-type',
  needs: ['samples', 'options'],
  wants: ['schedule', 'alignment'],
  detect: (facts) => {
    const coldC = coldEndC(facts.samples.celsius[0]!);
    const climb = plannedClimb(facts);
    if (climb !== null && !climbsAtFullPower(facts)) {
      const best = byPlan(facts, climb, coldC);
      if (best === null || best.offDeltaC > PLAUSIBLE_DELTA_C) return clear();
      const leastDeltaC = TIMES_WORSE * Math.max(best.offDeltaC, CERTAIN_DELTA_C);
      return best.rawDeltaC < leastDeltaC ? clear() : told(facts, best, best.rawDeltaC, true);
    }
    const meantC = climb?.topC ?? endPointC(facts);
    if (meantC === null) return notApplicable('no-target-cone');
    const { rawDeltaC, best } = byPeak(facts, meantC, coldC);
    if (rawDeltaC < FAR_OFF_DELTA_C || climbHours(facts) < LEAST_CLIMB_HOURS) return clear();
    return best === undefined ? clear() : told(facts, best, rawDeltaC, false);
  },
});
