import type { AlignedLeg, Alignment } from '../model/document.ts';
import type { Evidence } from '../model/finding.ts';
import type { Schedule } from '../model/schedule.ts';
import type { TraceSummary } from '../model/trace.ts';
import {
  celsius,
  celsiusPerHour,
  type Celsius,
  type Seconds,
  SECONDS_PER_HOUR,
  SECONDS_PER_MINUTE,
} from '../units.ts';

export type Course = NonNullable<AlignedLeg['actual']>;

/** A climb shorter than this has no rate worth naming (chosen: the kiln's lag is as long). */
const SHORTEST_CLIMB_C = 20;

/** A climb that was to run at a stated rate, as it was driven. */
export interface Climb {
  readonly segment: number;
  readonly planned: AlignedLeg['planned'];
  readonly actual: Course;
  readonly plannedCPerHour: number;
  readonly achievedCPerHour: number;
  /** Time the climb took. */
  readonly tookMinutes: number;
  /** Time the same climb, from where it began to where it ended, takes at the planned rate. */
  readonly dueMinutes: number;
}

export const lengthMinutes = (leg: {
  readonly startSeconds: number;
  readonly endSeconds: number;
}): number => (leg.endSeconds - leg.startSeconds) / SECONDS_PER_MINUTE;

const rateCPerHour = (leg: Omit<Course, 'rateCPerHour'>): number =>
  ((leg.endC - leg.startC) * SECONDS_PER_HOUR) / (leg.endSeconds - leg.startSeconds);

/** The climbs that happened and had a rate to keep; "full" is no rate. */
export const ratedClimbs = (schedule: Schedule, alignment: Alignment): Climb[] =>
  alignment.legs.flatMap(({ segment, kind, planned, actual }) => {
    if (segment === null || kind !== 'ramp' || actual === null) return [];
    if (schedule.segments[segment]?.rateCPerHour === 'full') return [];
    const climbedC = actual.endC - actual.startC;
    const plannedCPerHour = planned.rateCPerHour ?? rateCPerHour(planned);
    if (climbedC < SHORTEST_CLIMB_C || plannedCPerHour <= 0) return [];
    return {
      segment,
      planned,
      actual,
      plannedCPerHour,
      achievedCPerHour: rateCPerHour(actual),
      tookMinutes: lengthMinutes(actual),
      dueMinutes: (climbedC * SECONDS_PER_HOUR) / plannedCPerHour / SECONDS_PER_MINUTE,
    };
  });

/** A climb at the next one's rate: this near to it (chosen: as near as controllers keep rates) … */
const NEXT_RATE_PERCENT = 5;
/** … and this far from its own (chosen: clearly beyond a ramp that is merely slow or fast) … */
const OWN_RATE_PERCENT = 15;
/** … over so much that the rate is not that of the bend between the two (chosen). */
const LEAST_RUN_C = 100;

const offPercent = (rateCPerHour: number, wantedCPerHour: number): number =>
  100 * Math.abs(rateCPerHour / wantedCPerHour - 1);

/** Whether a stretch of climb, and the next climb itself, were driven at the next climb's rate. */
export const isAtRateOf = (course: Course, next: Climb): boolean =>
  course.endC - course.startC >= LEAST_RUN_C &&
  [course.rateCPerHour, next.achievedCPerHour].every(
    (achieved) => offPercent(achieved, next.plannedCPerHour) <= NEXT_RATE_PERCENT,
  );

/** Whether a climb was driven at just the rate of the next segment rather than at its own. */
export const ranAtRateOfNext = (climb: Climb, next: Climb): boolean =>
  next.segment === climb.segment + 1 &&
  isAtRateOf({ ...climb.actual, rateCPerHour: celsiusPerHour(climb.achievedCPerHour) }, next) &&
  offPercent(climb.achievedCPerHour, climb.plannedCPerHour) >= OWN_RATE_PERCENT;

/**
 * How far off the end of a climb can be from the record alone: one reading, and the time in which
 * the kiln crosses the noise and the rounding of the readings.
 */
export const endUncertaintyMinutes = (trace: TraceSummary, climbCPerHour: number): number => {
  const blurC = 2 * Math.max(trace.noiseC, trace.resolutionC / 2);
  const crossing = (blurC / climbCPerHour) * (SECONDS_PER_HOUR / SECONDS_PER_MINUTE);
  return trace.medianIntervalSeconds / SECONDS_PER_MINUTE + crossing;
};

/** The hottest target of a schedule, °C. */
export const topC = (schedule: Schedule): number =>
  Math.max(...schedule.segments.map(({ targetC }) => targetC));

/** Whether a segment goes to (or within a degree of) the schedule's hottest target. */
export const isTop = (schedule: Schedule, segment: number): boolean =>
  (schedule.segments[segment]?.targetC ?? -Infinity) > topC(schedule) - 1;

/** Whether a segment comes after the last that goes to the schedule's hottest target. */
export const isAfterPeak = (schedule: Schedule, segment: number): boolean =>
  segment > schedule.segments.findLastIndex((_, i) => isTop(schedule, i));

/**
 * Whether the record shows the kiln cooling by itself after the schedule's legs. The trace alone
 * takes a controlled fall at the end of a record for the kiln's own.
 */
export const coolsByItself = ({ legs }: Alignment): boolean =>
  legs.some(({ segment, actual }) => segment === null && actual !== null);

/** The stretch of the record in which a leg ran, marked at its middle temperature. */
export const evidenceOf = (course: Course): Evidence => ({
  fromSeconds: course.startSeconds,
  toSeconds: course.endSeconds,
  celsius: celsius((course.startC + course.endC) / 2),
});

/** A climb that ends within this of its target has arrived, whatever the noise (chosen). */
const ARRIVED_DELTA_C = 5;

/** By how much a climb ended short of its target, °C; null where it arrived. */
export const shortOfTargetC = ({ planned, actual }: Climb): number | null => {
  const shortC = planned.endC - actual.endC;
  return shortC > ARRIVED_DELTA_C ? shortC : null;
};

/** What a leg still had before it, in minutes of the plan. */
export const remainderMinutes = ({ kind, planned, actual }: AlignedLeg): number => {
  const plannedMinutes = lengthMinutes(planned);
  if (actual === null) return plannedMinutes;
  if (kind === 'hold') return Math.max(0, plannedMinutes - lengthMinutes(actual));
  const wholeC = planned.endC - planned.startC;
  const leftC = planned.endC - actual.endC;
  const isShort = leftC * wholeC > 0 && Math.abs(leftC) > ARRIVED_DELTA_C;
  return isShort ? plannedMinutes * Math.min(1, leftC / wholeC) : 0;
};

/** What of a schedule had not run when the record, or the firing, came to its end. */
export interface Unfinished {
  readonly minutes: number;
  readonly legs: readonly AlignedLeg[];
  /** Where the last leg that ran ended; null if none ran. */
  readonly endedC: Celsius | null;
  readonly endedSeconds: Seconds | null;
}

/** The rest of the last leg that ran, and all legs after it. */
export const unfinished = (alignment: Alignment): Unfinished => {
  const scheduled = alignment.legs.filter(({ segment }) => segment !== null);
  const last = scheduled.findLastIndex(({ actual }) => actual !== null);
  const legs = scheduled.slice(Math.max(0, last)).filter((leg) => remainderMinutes(leg) > 0);
  return {
    minutes: legs.reduce((sum, leg) => sum + remainderMinutes(leg), 0),
    legs,
    endedC: scheduled[last]?.actual?.endC ?? null,
    endedSeconds: scheduled[last]?.actual?.endSeconds ?? null,
  };
};
