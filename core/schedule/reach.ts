import { doseOfSegment } from '../cones/arrhenius.ts';
import { coneKinetics } from '../cones/cone-kinetics.ts';
import { standingOf } from '../cones/position.ts';
import type { ConeType } from '../model/cone.ts';
import type { Schedule } from '../model/schedule.ts';
import { celsius, seconds, SECONDS_PER_HOUR, SECONDS_PER_MINUTE, type Celsius } from '../units.ts';
import { intendedLegs } from './intended-curve.ts';

/** What a schedule would come to, followed to the letter. */
export interface Reach {
  readonly peakC: Celsius;
  /** Whole length; a leg at full power, or with the heat off, at its nominal rate. */
  readonly minutes: number;
  /** On the scale of cones; null below the coolest. */
  readonly position: number | null;
}

/** The room in which a schedule is begun (chosen; a schedule's heat-work does not hang on it). */
const ROOM_C = celsius(20);

/** What a schedule would come to if a kiln followed it to the letter from room temperature. */
export const reachOf = (schedule: Schedule, coneType: ConeType = 'self-supporting'): Reach => {
  const legs = intendedLegs(schedule, { atSeconds: seconds(0), celsius: ROOM_C });
  const cones = coneKinetics(coneType);
  const doses = cones.map((kinetics) =>
    legs.reduce((sum, { startC, endC, startSeconds, endSeconds }) => {
      const hours = (endSeconds - startSeconds) / SECONDS_PER_HOUR;
      return sum + doseOfSegment(kinetics, startC, endC, hours);
    }, 0),
  );
  return {
    peakC: celsius(Math.max(ROOM_C, ...schedule.segments.map(({ targetC }) => targetC))),
    minutes: (legs.at(-1)?.endSeconds ?? 0) / SECONDS_PER_MINUTE,
    position: standingOf(cones, doses).position,
  };
};
