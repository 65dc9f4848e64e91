import { doseOfClimb, endPoint } from '../cones/arrhenius.ts';
import { coneKinetics } from '../cones/cone-kinetics.ts';
import { positionOfCone, type Cone, type ConeType } from '../model/cone.ts';
import type { HeatWork, Load } from '../model/document.ts';
import { MARGIN_RATE } from './margins.ts';
import { placeOf } from './place.ts';

/** What the load's state depends on besides its heat-work. */
export interface LoadQuestion {
  readonly coneType?: ConeType | undefined;
  /** The firing stopped before its schedule did. */
  readonly endedEarly?: boolean | undefined;
}

/** Half a cone is a usual tolerance (common practice). */
const TOLERANCE_CONES = 0.5;
/** A range wider than a cone to either side says nothing for "as meant" (chosen). */
const TOO_WIDE_CONES = 1;

const stateOf = ({ cone, target }: HeatWork): Load['state'] => {
  if (target === null) return 'cannot-tell';
  const meant = positionOfCone(target.cone);
  const low = cone.lowPosition ?? -Infinity;
  const high = cone.bound === 'at-least' ? Infinity : (cone.highPosition ?? -Infinity);
  if (target.verdict === 'under') return high < meant ? 'short' : 'cannot-tell';
  if (target.verdict === 'over') return low > meant ? 'beyond' : 'cannot-tell';
  const isTold = meant - low <= TOO_WIDE_CONES && high - meant <= TOO_WIDE_CONES;
  return isTold ? 'as-meant' : 'cannot-tell';
};

/**
 * The cone to fire again to: the hottest, up to the one that was meant, that with the heat-work the
 * load already has does not go more than half a cone past it. A first firing two cones short adds
 * next to nothing, and the answer is the cone that was meant.
 */
const refireTo = (heatWork: HeatWork, meant: Cone, coneType: ConeType): Cone => {
  const cones = coneKinetics(coneType);
  const had = cones.map(
    ({ cone }) => heatWork.byCone.find((entry) => entry.cone === cone)?.dose ?? 0,
  );
  const within = cones.findLast((again) => {
    if (again.position > positionOfCone(meant)) return false;
    const top = endPoint(again, MARGIN_RATE);
    const both = cones.map((kinetics, i) => had[i]! + doseOfClimb(kinetics, top, MARGIN_RATE));
    return placeOf(cones, both) <= positionOfCone(meant) + TOLERANCE_CONES;
  });
  return within?.cone ?? meant;
};

/**
 * Whether the load got what was meant, told by the 80 % range and not by the middle of it: short only
 * where even the hot end misses the cone, beyond only where even the cold end passes it.
 */
export const loadOf = (heatWork: HeatWork | null, question: LoadQuestion = {}): Load => {
  if (heatWork?.target == null) {
    return { state: question.endedEarly === true ? 'short' : 'cannot-tell', refireTo: null };
  }
  const state = stateOf(heatWork);
  if (state !== 'short') return { state, refireTo: null };
  const again = refireTo(heatWork, heatWork.target.cone, question.coneType ?? 'self-supporting');
  return { state, refireTo: again };
};
