import type { ConeKinetics } from '../cones/cone-kinetics.ts';
import { positionOfCone, type Cone } from '../model/cone.ts';
import type { HeatWork } from '../model/document.ts';
import { marginOf } from './margins.ts';
import type { Measured } from './measured.ts';

/** Half a cone is a usual tolerance (common practice). */
const TOLERANCE_CONES = 0.5;

/** The position, carried on past the hottest cone by the last step between cones. */
const placeBeyond = ({ record, doses, standing }: Measured): number | null => {
  if (!standing.beyond || standing.position === null) return standing.position;
  const [hottest, before] = [Math.log(doses.at(-1)!), Math.log(doses.at(-2)!)];
  const step = record.cones.at(-1)!.position - record.cones.at(-2)!.position;
  return standing.position + (step * hottest) / Math.max(before - hottest, 1e-6);
};

const verdictOf = (all: Measured, target: Cone): 'under' | 'within' | 'over' => {
  const place = placeBeyond(all);
  const off = (place ?? -Infinity) - positionOfCone(target);
  if (Math.abs(off) <= TOLERANCE_CONES) return 'within';
  return off < 0 ? 'under' : 'over';
};

/** How the cone that was meant came out. */
export const targetOf = (all: Measured, target: Cone | null): HeatWork['target'] => {
  if (target === null) return null;
  const index = all.record.cones.findIndex(({ cone }) => cone === target);
  const dose = all.doses[index]!;
  const marginC = marginOf(all.record.cones[index]!, dose);
  return { cone: target, dose, marginC, verdict: verdictOf(all, target) };
};

/** The cone that shares are told of: the one meant, else the nearest to where the firing stands. */
export const coneOfInterest = (
  { record, standing }: Measured,
  target: Cone | null,
): ConeKinetics => {
  const place = target === null ? (standing.position ?? -Infinity) : positionOfCone(target);
  return record.cones.reduce((nearest, one) =>
    Math.abs(one.position - place) < Math.abs(nearest.position - place) ? one : nearest,
  );
};
