import { doseOfClimb, endPoint, type Arrhenius } from '../cones/arrhenius.ts';
import type { ConeKinetics } from '../cones/cone-kinetics.ts';
import { standingOf, type Standing } from '../cones/position.ts';
import {
  celsius,
  celsiusDelta,
  celsiusPerHour,
  type Celsius,
  type CelsiusDelta,
} from '../units.ts';

/** The rate that margins and equivalent end points refer to: the chart's middle column. */
export const MARGIN_RATE = celsiusPerHour(60);

const HALVINGS = 40;

/**
 * °C of end point at 60 °C/h by which a dose passes the cone's own (negative: is short of it), with
 * the cone's own E. Null for no dose at all.
 */
export const marginOf = (kinetics: Arrhenius, dose: number): CelsiusDelta | null =>
  dose > 0
    ? celsiusDelta(endPoint(kinetics, MARGIN_RATE, dose) - endPoint(kinetics, MARGIN_RATE))
    : null;

/**
 * The end of a climb at 60 °C/h with the same position, found between the end points of the cones
 * that bracket it. Null below the coolest cone, and beyond the hottest, where no position is left.
 */
export const equivalentOf = (
  cones: readonly ConeKinetics[],
  { label, position, beyond }: Standing,
): Celsius | null => {
  const down = cones.findIndex(({ cone }) => cone === label);
  const [cooler, hotter] = [cones[down], cones[down + 1]];
  if (cooler === undefined || hotter === undefined || position === null || beyond) return null;
  const pair = [cooler, hotter];
  const positionAt = (atC: number): number =>
    standingOf(
      pair,
      pair.map((kinetics) => doseOfClimb(kinetics, celsius(atC), MARGIN_RATE)),
    ).position ?? cooler.position;
  let low: number = endPoint(cooler, MARGIN_RATE);
  let high: number = endPoint(hotter, MARGIN_RATE);
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (positionAt(middle) < position) low = middle;
    else high = middle;
  }
  return celsius((low + high) / 2);
};
