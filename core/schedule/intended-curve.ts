import type { Schedule, Segment } from '../model/schedule.ts';
import {
  celsiusPerHour,
  minutes,
  seconds,
  SECONDS_PER_HOUR,
  type Celsius,
  type CelsiusPerHour,
  type Seconds,
} from '../units.ts';

/** A leg of the schedule: a climb, a hold or a controlled fall. */
export interface IntendedLeg {
  readonly segment: number;
  readonly kind: 'ramp' | 'hold' | 'cooling';
  readonly startSeconds: Seconds;
  readonly endSeconds: Seconds;
  readonly startC: Celsius;
  readonly endC: Celsius;
  /** Null at full power (or heat off), where the kiln and not the schedule sets the rate. */
  readonly rateCPerHour: CelsiusPerHour | null;
}

/** Whether a leg climbs with all the power there is, so that no rate tells it from a runaway. */
export const isFreeClimb = (leg: Pick<IntendedLeg, 'kind' | 'rateCPerHour'> | undefined): boolean =>
  leg?.kind === 'ramp' && leg.rateCPerHour === null;

export interface IntendedStart {
  readonly atSeconds: Seconds;
  readonly celsius: Celsius;
}

/**
 * How long a leg without a rate is taken to last until the firing itself shows it: an ordinary
 * kiln's climb at full power, and its fall with the heat off (chosen, for drawing only).
 */
const NOMINAL_FULL_C_PER_HOUR = { up: 250, down: 120 } as const;

/** How long a leg at full power, or with the heat off, lasted; null where that is not known. */
export type FreeDuration = (segment: number) => Seconds | null;

const rampSeconds = (
  segment: Segment,
  index: number,
  fromC: Celsius,
  freeDuration: FreeDuration,
): Seconds => {
  const change = segment.targetC - fromC;
  if (change === 0) return seconds(0);
  if (segment.minutes !== null) return minutes(segment.minutes);
  if (typeof segment.rateCPerHour === 'number') {
    return seconds((Math.abs(change) / segment.rateCPerHour) * SECONDS_PER_HOUR);
  }
  const nominal = NOMINAL_FULL_C_PER_HOUR[change > 0 ? 'up' : 'down'];
  return freeDuration(index) ?? seconds((Math.abs(change) / nominal) * SECONDS_PER_HOUR);
};

/** The rate over a leg; null for no leg at all. */
const rateOver = (changeC: number, span: Seconds): CelsiusPerHour =>
  celsiusPerHour(span > 0 ? (changeC / span) * SECONDS_PER_HOUR : 0);

/**
 * The legs of a schedule laid from a start: for every segment its climb or fall (left out where the
 * kiln is at its target already) and its hold (left out where there is none).
 */
export const intendedLegs = (
  schedule: Schedule,
  start: IntendedStart,
  freeDuration: FreeDuration = () => null,
): IntendedLeg[] => {
  const legs: IntendedLeg[] = [];
  let at = start.atSeconds;
  let from = start.celsius;
  schedule.segments.forEach((segment, index) => {
    const target = segment.targetC;
    if (target !== from) {
      const end = seconds(at + rampSeconds(segment, index, from, freeDuration));
      const isFree = segment.rateCPerHour === 'full';
      legs.push({
        segment: index,
        kind: target > from ? 'ramp' : 'cooling',
        startSeconds: at,
        endSeconds: end,
        startC: from,
        endC: target,
        rateCPerHour: isFree ? null : rateOver(target - from, seconds(end - at)),
      });
      at = end;
    }
    if (segment.holdMinutes > 0) {
      const end = seconds(at + minutes(segment.holdMinutes));
      legs.push({
        segment: index,
        kind: 'hold',
        startSeconds: at,
        endSeconds: end,
        startC: target,
        endC: target,
        rateCPerHour: celsiusPerHour(0),
      });
      at = end;
    }
    from = target;
  });
  return legs;
};

/** The corners of the intended curve: its start and the end of every leg. */
export const intendedCorners = (
  legs: readonly IntendedLeg[],
  start: IntendedStart,
): { atSeconds: Seconds; celsius: Celsius }[] => [
  { atSeconds: start.atSeconds, celsius: start.celsius },
  ...legs.map((leg) => ({ atSeconds: leg.endSeconds, celsius: leg.endC })),
];
