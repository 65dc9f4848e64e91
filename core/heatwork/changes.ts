/**
 * What a firing would have given had its top been otherwise: the same record, with one thing changed.
 * Every change is written as the dose of any cone after it, in closed form on the record's own hours
 * at temperature, all as true temperatures.
 */
import { doseOfSegment, doseRate, type Arrhenius } from '../cones/arrhenius.ts';
import { doseOf, joined, movedTo } from '../cones/occupancy.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../units.ts';
import type { FiringParts } from './firing-parts.ts';

const MINUTES_PER_HOUR = SECONDS_PER_HOUR / SECONDS_PER_MINUTE;

/** Dose of a cone after a change by an amount; 0 changes nothing. */
export type Change = (kinetics: Arrhenius, amount: number) => number;

/** Computes a cone's value once. */
const remembered = (of: (kinetics: Arrhenius) => number): ((kinetics: Arrhenius) => number) => {
  const values = new Map<Arrhenius, number>();
  return (kinetics) => {
    const known = values.get(kinetics) ?? of(kinetics);
    values.set(kinetics, known);
    return known;
  };
};

/** Minutes more (negative: less) at the temperature of the hold. */
export const soakChange = ({ before, lastStretch, after, soakC }: FiringParts): Change => {
  const known = remembered((kinetics) => doseOf(kinetics, joined(before, lastStretch, after)));
  return (kinetics, minutes) =>
    known(kinetics) + (minutes / MINUTES_PER_HOUR) * doseRate(kinetics, soakC);
};

/**
 * A peak higher by °C (negative: lower, by no more than the last stretch), with the last ramp's rate,
 * the hold and the cooling as they were. What the last stretch really gave, ripple and all, is scaled
 * as a straight climb of its length would be.
 */
export const peakChange = (parts: FiringParts): Change => {
  const { before, lastStretch, after, lastFromC, rampEndC, rampRateCPerHour } = parts;
  const climbTo = (kinetics: Arrhenius, toC: number): number =>
    doseOfSegment(kinetics, lastFromC, toC, (toC - lastFromC) / rampRateCPerHour);
  const first = remembered((kinetics) => doseOf(kinetics, before));
  const scale = remembered(
    (kinetics) => doseOf(kinetics, lastStretch) / climbTo(kinetics, rampEndC),
  );
  return (kinetics, byC) => {
    const moved = movedTo(after, (atC) => atC + byC);
    const climb = scale(kinetics) * climbTo(kinetics, rampEndC + byC);
    return first(kinetics) + climb + doseOf(kinetics, moved);
  };
};

/** The last stretch slower by a factor of e to the power of the amount. */
export const slowerChange = ({ before, lastStretch, after }: FiringParts): Change => {
  const rest = remembered((kinetics) => doseOf(kinetics, joined(before, after)));
  const stretch = remembered((kinetics) => doseOf(kinetics, lastStretch));
  return (kinetics, folds) => rest(kinetics) + stretch(kinetics) * Math.exp(folds);
};
