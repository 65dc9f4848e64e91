import { positionOfCone, type Cone } from '../model/cone.ts';
import type { HeatWork } from '../model/document.ts';
import type { Evidence } from '../model/finding.ts';
import { namesakeOf } from './namesake.ts';

/** Half a cone is the usual tolerance of a firing (common practice, no source). */
export const HALF_CONE = 0.5;

/** How far the heat-work came out from the cone that was meant. */
export interface OffTarget {
  readonly cone: Cone;
  /** Position minus the target's: negative is short of it. */
  readonly offCones: number;
  /**
   * More than half a cone off, with even the near end of the 80 % range beyond the target's own
   * half cone: not to be explained by the couple's tolerance and the chart's scatter.
   */
  readonly certain: boolean;
}

/** Null without a target cone or where no cone's position is known. */
export const offTarget = ({ cone, target }: HeatWork): OffTarget | null => {
  if (target === null || cone.position === null) return null;
  const meant = positionOfCone(target.cone);
  const offCones = cone.position - meant;
  const nearEnd = offCones < 0 ? cone.highPosition : cone.lowPosition;
  const isClear = nearEnd !== null && Math.abs(nearEnd - meant) > HALF_CONE;
  const isSameSide = nearEnd !== null && (nearEnd - meant) * offCones > 0;
  // A lower bound says nothing of falling short: the firing may have gone on.
  const isKnown = cone.bound === 'both-ways' || offCones > 0;
  return {
    cone: target.cone,
    offCones,
    certain: isKnown && Math.abs(offCones) > HALF_CONE && isClear && isSameSide,
  };
};

/** Chosen, as in `wrong-end-cone`: this near to the namesake, the zero is what was mistaken. */
const NAMESAKE_CONES = 1;

/** Whether a firing came out about at the cone of the same number with the zero lost or added. */
export const isNearNamesake = ({ cone, offCones }: OffTarget): boolean => {
  const namesake = namesakeOf(cone);
  if (namesake === null) return false;
  const apart = positionOfCone(namesake) - positionOfCone(cone);
  return Math.abs(offCones - apart) <= NAMESAKE_CONES;
};

/** Whether the heat-work is known and certainly missed its target, either way. */
export const certainlyMissed = (heatWork: HeatWork | null): boolean =>
  heatWork !== null && (offTarget(heatWork)?.certain ?? false);

/** The first and the last share of the dose are no evidence of where it came from (chosen). */
const TELLING = { from: 0.05, to: 0.95 } as const;

/** The stretch in which nearly all of the heat-work was done, which is about the peak. */
export const heatWorkEvidence = (
  { accumulated }: HeatWork,
  peakAtSeconds: Evidence['fromSeconds'],
): Evidence[] => {
  const whole = accumulated.at(-1)?.dose ?? 0;
  const first = accumulated.find(({ dose }) => dose >= TELLING.from * whole);
  const last = accumulated.find(({ dose }) => dose >= TELLING.to * whole);
  if (whole <= 0 || first === undefined || last === undefined) {
    return [{ fromSeconds: peakAtSeconds, toSeconds: peakAtSeconds }];
  }
  return [{ fromSeconds: first.atSeconds, toSeconds: last.atSeconds }];
};
