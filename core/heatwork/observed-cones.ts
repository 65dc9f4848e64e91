import type { ObservedCone } from '../model/options.ts';
import { bendLikelihood } from './cone-bend.ts';

/** A cone's margin in °C of end point if the readings err by so much at the top. */
export type MarginWith = (observed: ObservedCone, errorC: number) => number;

/** Margins are computed this far apart and read off straight between: they are all but straight. */
const STEP_C = 4;

const tabulated = (of: (errorC: number) => number): ((errorC: number) => number) => {
  const known = new Map<number, number>();
  const at = (step: number): number => {
    const value = known.get(step) ?? of(step * STEP_C);
    known.set(step, value);
    return value;
  };
  return (errorC) => {
    const below = Math.floor(errorC / STEP_C);
    const share = errorC / STEP_C - below;
    return share === 0 ? at(below) : (1 - share) * at(below) + share * at(below + 1);
  };
};

/** By what a place is told from others: its name, however it was typed. */
export const placeKey = ({ place }: ObservedCone): string => place.trim().toLowerCase();

/**
 * How well an error of the readings agrees with the witness cones of each place: cones that stood
 * side by side must all agree.
 */
export const likelihoodByPlace = (
  observed: readonly ObservedCone[],
  marginWith: MarginWith,
): ((errorC: number) => number)[] => {
  const places = new Map<string, ((errorC: number) => number)[]>();
  for (const one of observed) {
    const place = placeKey(one);
    const margin = tabulated((errorC) => marginWith(one, errorC));
    const likelihood = (errorC: number) => bendLikelihood(one.bendDegrees, margin(errorC));
    places.set(place, [...(places.get(place) ?? []), likelihood]);
  }
  return [...places.values()].map(
    (cones) => (errorC: number) => cones.reduce((product, cone) => product * cone(errorC), 1),
  );
};
