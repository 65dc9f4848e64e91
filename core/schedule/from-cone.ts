import { doseRate, doseOfClimb, endPoint, type Arrhenius } from '../cones/arrhenius.ts';
import { kineticsOf } from '../cones/cone-kinetics.ts';
import type { Cone, ConeType } from '../model/cone.ts';
import { printedCone } from '../model/cone.ts';
import type { Schedule, Segment } from '../model/schedule.ts';
import {
  celsius,
  celsiusPerHour,
  minutes,
  toHours,
  type Celsius,
  type CelsiusPerHour,
} from '../units.ts';

export interface ConeAim {
  readonly cone: Cone;
  readonly coneType?: ConeType;
  /** The rate over the last stretch, at least 100 °C, before the top. */
  readonly lastRampCPerHour: CelsiusPerHour;
  readonly holdMinutes: number;
}

/**
 * How the kiln gets to the last ramp: moderately, for ordinary ware (chosen; a slow climb below
 * boiling, then a middling one). Thick or damp ware wants it slower.
 */
const LEAD_IN = [
  { rateCPerHour: celsiusPerHour(60), targetC: celsius(100), holdMinutes: 30 },
  { rateCPerHour: celsiusPerHour(120), targetC: celsius(600), holdMinutes: 0 },
] as const;
const MIDDLE_C_PER_HOUR = celsiusPerHour(150);
/** The chart's rates hold over the last 100 °C; a little more leaves the kiln time to settle. */
const LAST_RAMP_C = 120;

/** The dose of a climb at a rate to a top and a hold there. */
const doseOfEnd = (kinetics: Arrhenius, top: Celsius, aim: ConeAim): number =>
  doseOfClimb(kinetics, top, aim.lastRampCPerHour) +
  doseRate(kinetics, top) * toHours(minutes(aim.holdMinutes));

/**
 * The top temperature at which a climb at the aim's rate and its hold bring the cone just down. The
 * hold only adds, so the answer lies below the rate's own end point; found by halving.
 */
export const topForCone = (aim: ConeAim): Celsius => {
  const kinetics = kineticsOf(aim.coneType ?? 'self-supporting', aim.cone);
  let high: number = endPoint(kinetics, aim.lastRampCPerHour);
  let low = high - 200;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (doseOfEnd(kinetics, celsius(middle), aim) < 1) low = middle;
    else high = middle;
  }
  return celsius(high);
};

/**
 * A schedule that brings a cone just down: a moderate climb, the last ramp at the rate asked for, the
 * hold, and the top temperature that goes with them, rounded to whole degrees.
 */
export const scheduleFromCone = (aim: ConeAim): Schedule => {
  const topC = celsius(Math.round(topForCone(aim)));
  const turnC = celsius(topC - LAST_RAMP_C);
  const lead: Segment[] = LEAD_IN.filter((segment) => segment.targetC < turnC).map((segment) => ({
    ...segment,
    minutes: null,
  }));
  const middle = { rateCPerHour: MIDDLE_C_PER_HOUR, minutes: null, targetC: turnC, holdMinutes: 0 };
  const last = { rateCPerHour: aim.lastRampCPerHour, minutes: null, targetC: topC };
  return {
    name: `Cone ${printedCone(aim.cone)}`,
    cone: aim.cone,
    segments: [...lead, middle, { ...last, holdMinutes: aim.holdMinutes }],
  };
};
