import type { AlignedLeg, Alignment } from '../model/document.ts';
import type { Schedule } from '../model/schedule.ts';
import type { Trace } from '../model/trace.ts';
import { lowerBound } from '../numeric/search.ts';
import { median } from '../numeric/statistics.ts';
import {
  intendedCorners,
  intendedLegs,
  type IntendedLeg,
  type IntendedStart,
} from '../schedule/intended-curve.ts';
import type { Course } from '../trace/course.ts';
import { seconds } from '../units.ts';
import { anchoredHot, startOfPlan } from './anchor.ts';
import { boundaryCertainties } from './certainty.ts';
import { plannedClock } from './clock.ts';
import { confidenceOf } from './confidence.ts';
import { gridOf } from './grid.ts';
import { layLegs } from './lay.ts';
import { refineLaying, type RefinedLaying } from './refine.ts';
import { readSetpoint, setpointClock } from './setpoint.ts';
import { verdictOf } from './verdicts.ts';

/** Time by time, where the plan is laid; full power takes as long as the firing shows it took. */
const planFor = (
  schedule: Schedule,
  trace: Trace,
  searched: readonly IntendedLeg[],
  start: IntendedStart,
  refined: RefinedLaying,
): { start: IntendedStart; legs: IntendedLeg[] } => {
  const actualOf = (segment: number): Course | null => {
    const index = searched.findIndex((leg) => leg.segment === segment && leg.kind !== 'hold');
    return refined.legs[index] ?? null;
  };
  const freeDuration = (segment: number) => {
    const course = actualOf(segment);
    return course === null ? null : seconds(course.endSeconds - course.startSeconds);
  };
  const legs = intendedLegs(schedule, start, freeDuration);
  if (trace.summary.startSeconds !== null) return { start, legs };
  const anchored = anchoredHot(start, legs, refined.legs);
  return { start: anchored, legs: intendedLegs(schedule, anchored, freeDuration) };
};

/** A hold as short as this, in share and in time, is a kiln turning round, not a hold (chosen). */
const NO_HOLD_SHARE = 0.2;
const NO_HOLD_SECONDS = 180;

const happened = (planned: IntendedLeg, actual: Course | null): Course | null => {
  if (actual === null || planned.kind !== 'hold') return actual;
  const lasted = actual.endSeconds - actual.startSeconds;
  const share = lasted / (planned.endSeconds - planned.startSeconds);
  return share < NO_HOLD_SHARE && lasted < NO_HOLD_SECONDS ? null : actual;
};

/** How much of a leg the record shows: of the first one in a record that begins hot, its rest. */
const seenShare = (planned: IntendedLeg, actual: Course | null, isFirst: boolean): number => {
  const span = planned.endC - planned.startC;
  if (!isFirst || actual === null || span === 0) return 1;
  return Math.min(1, Math.max(0, (planned.endC - actual.startC) / span));
};

/** The ends of a hold belong to arriving and leaving: its middle half says where it stood (chosen). */
const END_SHARE = 0.25;

const offLevelC = ({ atSeconds, smoothC }: Trace, planned: IntendedLeg, actual: Course | null) => {
  if (planned.kind !== 'hold' || actual === null) return 0;
  const end = END_SHARE * (actual.endSeconds - actual.startSeconds);
  const from = lowerBound(atSeconds, actual.startSeconds + end);
  const to = lowerBound(atSeconds, actual.endSeconds - end);
  return to > from ? median(smoothC.subarray(from, to)) - planned.endC : 0;
};

const alignedLegs = (
  trace: Trace,
  planned: readonly IntendedLeg[],
  found: readonly (Course | null)[],
): AlignedLeg[] => {
  const beginsHot = trace.summary.startSeconds === null;
  const first = beginsHot ? found.findIndex((course) => course !== null) : -1;
  return planned.map((leg, k) => {
    const { segment, kind, ...course } = leg;
    const actual = happened(leg, found[k] ?? null);
    const verdict = verdictOf(leg, actual, trace.summary.noiseC, {
      comesFrom: planned[k - 1]?.kind === 'cooling' ? 'above' : 'below',
      offLevelC: offLevelC(trace, leg, actual),
      seenShare: seenShare(leg, actual, k === first),
    });
    return { segment, kind, planned: course, actual, verdict };
  });
};

/** The natural cooling after the last leg; the schedule says only when it was to begin. */
const coolingLeg = (
  start: IntendedStart,
  last: IntendedLeg | undefined,
  actual: Course,
): AlignedLeg => {
  const at = last?.endSeconds ?? start.atSeconds;
  const from = last?.endC ?? start.celsius;
  return {
    segment: null,
    kind: 'cooling',
    planned: { startSeconds: at, endSeconds: at, startC: from, endC: from, rateCPerHour: null },
    actual,
    verdict: 'as-planned',
  };
};

/**
 * Lays a schedule on a trace: which stretch of the record is which leg, by the global optimum over
 * ordered leg boundaries, refined on the full samples. The plan itself is laid once, from the
 * moment heating begins, and never re-anchored, so lateness adds up as the potter met it.
 */
export const align = (trace: Trace, schedule: Schedule): Alignment => {
  const provisional = startOfPlan(trace);
  const searched = intendedLegs(schedule, provisional);
  const grid = gridOf(trace, searched);
  const setpoint = readSetpoint(trace);
  const clock =
    setpoint === null ? plannedClock(searched) : setpointClock(trace, setpoint, searched);
  const { laying, tables } = layLegs(grid, searched, clock);
  const refined = refineLaying(trace, grid, laying, searched, setpoint?.corners ?? null);
  const { start, legs } = planFor(schedule, trace, searched, provisional, refined);
  const aligned = alignedLegs(trace, legs, refined.legs);
  if (refined.cooling !== null) aligned.push(coolingLeg(start, legs.at(-1), refined.cooling));
  return {
    confidence: confidenceOf(grid, tables, laying, boundaryCertainties(grid, tables, laying)),
    legs: aligned,
    planned: intendedCorners(legs, start),
    setpointDisagreementSeconds: refined.setpointDisagreementSeconds,
  };
};
