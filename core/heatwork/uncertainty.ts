import { doseOf, movedTo } from '../cones/occupancy.ts';
import type { ObservedCone } from '../model/options.ts';
import { errorBelief, errorQuantile, type ErrorBelief } from './error-belief.ts';
import { dosesWith, holdDoses, standingWith, truthOf, type FiringRecord } from './firing-record.ts';
import { marginOf } from './margins.ts';
import { modelSpread, type ModelSpread } from './model-spread.ts';
import { likelihoodByPlace, type MarginWith } from './observed-cones.ts';
import { placeOf } from './place.ts';
import { unseenTime, type Unseen } from './unseen.ts';

/** All that is not known of a firing's heat-work. */
export interface Uncertainty {
  readonly belief: ErrorBelief;
  readonly spread: ModelSpread;
  readonly unseen: Unseen;
  /** Whether witness cones took part. */
  readonly byCones: boolean;
}

/** The shares of an 80 % range. */
const LOW_SHARE = 0.1;
const HIGH_SHARE = 0.9;
/** Half the standard normal distribution's 80 % range, in standard deviations. */
const NORMAL_80 = 1.2816;
/** The cone nearest to a place. */
const nearest = (record: FiringRecord, place: number): number =>
  record.cones.reduce(
    (best, { position }, i) =>
      Math.abs(position - place) < Math.abs(record.cones[best]!.position - place) ? i : best,
    0,
  );

/** A cone's margin in °C of end point if the readings err by so much at the top. */
const marginWith =
  (record: FiringRecord): MarginWith =>
  ({ cone }, errorC) => {
    const kinetics = record.cones.find((one) => one.cone === cone)!;
    const truth = movedTo(record.occupancy, truthOf(record, errorC));
    return marginOf(kinetics, doseOf(kinetics, truth)) ?? -Infinity;
  };

/** Weighs everything that may stand between the record and the heat-work. */
export const uncertaintyOf = (
  record: FiringRecord,
  observed: readonly ObservedCone[],
): Uncertainty => {
  const { cones, coneType, top } = record;
  const doses = dosesWith(record, 0);
  const rateCPerHour = top.rampRateCPerHour;
  const holds = holdDoses(record);
  const spread = modelSpread({ coneType, cones, doses, holdDoses: holds, rateCPerHour });
  const near = nearest(record, placeOf(cones, doses));
  const unseen = unseenTime(record.trace, top, cones[near]!, doses[near]!);
  const belief = errorBelief({
    toleranceC: record.topToleranceC,
    modelSigmaC: spread.sigmaC,
    unseenCoolerC: unseen.coolerC,
    unseenHotterC: unseen.hotterC,
    places: likelihoodByPlace(observed, marginWith(record)),
  });
  return { belief, spread, unseen, byCones: observed.length > 0 };
};

/** The error to correct the readings by: what witness cones imply, and nothing without them. */
export const bestErrorC = ({ belief, byCones }: Uncertainty): number =>
  byCones ? errorQuantile(belief, 0.5) : 0;

/** The 80 % range of the position; an end is null below the coolest cone. */
export const positionRange = (
  record: FiringRecord,
  { belief, spread, byCones }: Uncertainty,
  position: number | null,
): { low: number | null; high: number | null } => {
  const low = standingWith(record, errorQuantile(belief, HIGH_SHARE)).position;
  const high = standingWith(record, errorQuantile(belief, LOW_SHARE)).position;
  if (position === null || byCones) return { low, high };
  const coolest = record.cones[0]!.position;
  const widened = low === null ? null : Math.min(low, position - spread.leastCones);
  return {
    low: widened !== null && widened < coolest ? null : widened,
    high: high === null ? null : Math.max(high, position + spread.leastCones),
  };
};

/**
 * The couple's own error by the cones: the belief holds the chart's and the hold rules' doubt as
 * well, which is taken as more doubt about the couple.
 */
export const coupleError = ({
  belief,
  spread,
}: Uncertainty): { estimate: number; low: number; high: number } => {
  const estimate = errorQuantile(belief, 0.5);
  const model = NORMAL_80 * spread.sigmaC;
  return {
    estimate,
    low: estimate - Math.hypot(estimate - errorQuantile(belief, LOW_SHARE), model),
    high: estimate + Math.hypot(errorQuantile(belief, HIGH_SHARE) - estimate, model),
  };
};
