import type { ConeKinetics } from '../cones/cone-kinetics.ts';

/**
 * A place on the cone scale as a condition on two doses: with the cones on either side of it, the
 * position is at least `q` where (1 − f)·ln(cooler dose) + f·ln(hotter dose) ≥ 0, f being how far q
 * lies from the cooler to the hotter. It is what interpolation in ln(dose) means, and needs two cones
 * instead of all.
 */
export interface Level {
  readonly cooler: ConeKinetics;
  readonly hotter: ConeKinetics;
  readonly share: number;
}

/** The level of a position; null outside the cones. */
export const levelAt = (cones: readonly ConeKinetics[], position: number): Level | null => {
  const above = cones.findIndex((kinetics) => kinetics.position >= position);
  const hotter = cones[above];
  if (hotter === undefined) return null;
  if (hotter.position === position) return { cooler: hotter, hotter, share: 0 };
  const cooler = cones[above - 1];
  if (cooler === undefined) return null;
  const share = (position - cooler.position) / (hotter.position - cooler.position);
  return { cooler, hotter, share };
};

/** How far ln(dose) stands above a level (negative: below it), for doses by cone. */
export const aboveLevel = (
  { cooler, hotter, share }: Level,
  dose: (kinetics: ConeKinetics) => number,
): number => (1 - share) * Math.log(dose(cooler)) + share * Math.log(dose(hotter));
