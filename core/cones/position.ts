import type { Cone } from '../model/cone.ts';
import type { ConeKinetics } from './cone-kinetics.ts';
import { doseOf, type Occupancy } from './occupancy.ts';

/** Where a firing stands among the cones. */
export interface Standing {
  /** The hottest cone brought fully down; null below the coolest. */
  readonly label: Cone | null;
  /** Null below the coolest cone; the hottest cone's position once that one is down. */
  readonly position: number | null;
  /** The hottest cone of all is down: how much hotter it was cannot be said in cones. */
  readonly beyond: boolean;
}

/**
 * Interpolates in ln(dose) between the hottest cone that is down and the next, which is not. Where a
 * very slow firing would bring two neighbours down out of order, the hotter one counts.
 */
export const standingOf = (cones: readonly ConeKinetics[], doses: readonly number[]): Standing => {
  const down = doses.findLastIndex((dose) => dose >= 1);
  const cone = cones[down];
  if (cone === undefined) return { label: null, position: null, beyond: false };
  const next = cones[down + 1];
  if (next === undefined) return { label: cone.cone, position: cone.position, beyond: true };
  const passed = Math.log(doses[down]!);
  const missing = -Math.log(doses[down + 1]!);
  const share = passed / (passed + missing);
  return {
    label: cone.cone,
    position: cone.position + share * (next.position - cone.position),
    beyond: false,
  };
};

/** Where hours at temperature stand among the cones. */
export const standingAt = (cones: readonly ConeKinetics[], occupancy: Occupancy): Standing =>
  standingOf(
    cones,
    cones.map((kinetics) => doseOf(kinetics, occupancy)),
  );
