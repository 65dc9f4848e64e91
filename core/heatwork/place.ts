import type { ConeKinetics } from '../cones/cone-kinetics.ts';
import { standingOf } from '../cones/position.ts';

/**
 * A position that always is a number, for differences: below the coolest cone it is that of one cone
 * less, so that a step from nothing to the first cone counts as a cone.
 */
export const placeOf = (cones: readonly ConeKinetics[], doses: readonly number[]): number =>
  standingOf(cones, doses).position ?? cones[0]!.position - 1;
