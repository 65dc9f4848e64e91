import type { KilnPlan } from './kiln.ts';
import type { Tuning } from './pid.ts';
import type { WallPlan } from './wall.ts';

/** A load such as whoever set up the controller had in the kiln, kg. */
const SET_UP_WITH_KG = 35;
/** Heat capacity of ware and furniture for the rough sum, J/(kg·K). */
const ROUGH_HEAT = 1050;
/** Of a wall, about this share swings along with the chamber. */
const WALL_SHARE = 0.4;

const wallCapacity = ({ layers, innerAreaM2, outerAreaM2 }: WallPlan): number =>
  layers.reduce(
    (sum, { material, thicknessM }) =>
      sum + material.densityKgPerM3 * thicknessM * material.heatCapacity[0],
    0,
  ) *
  ((innerAreaM2 + outerAreaM2) / 2);

/** The ramp's own need is fed forward with some caution, the rest left to the loop. */
const RAMP_CAUTION = 0.85;

/** Settings as found once for a kiln: close on ramps, little beyond at their ends. */
export const usualTuning = (kiln: KilnPlan): Tuning => {
  const capacityJPerK =
    (SET_UP_WITH_KG + kiln.furnitureKg) * ROUGH_HEAT +
    WALL_SHARE * (wallCapacity(kiln.sides) + wallCapacity(kiln.ends));
  return {
    bandC: 25,
    resetSeconds: 900,
    rateSeconds: 120,
    perRampCPerHour: (RAMP_CAUTION * capacityJPerK) / 3600 / kiln.elements.ratedWatts,
  };
};
