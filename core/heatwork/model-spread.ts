import { chartedRates, chartScatterC, type ConeKinetics } from '../cones/cone-kinetics.ts';
import type { ConeType } from '../model/cone.ts';
import { placeOf } from './place.ts';

/** How far the cones of a chart may be from the cone in the kiln, apart from the couple. */
export interface ModelSpread {
  /** Chart scatter and rates outside the chart together, as a standard deviation. */
  readonly sigmaC: number;
  /** After holds the range is at least this wide to either side, in cones. */
  readonly leastCones: number;
  readonly outsideChart: boolean;
  readonly holdsAdded: boolean;
}

/**
 * A fit to two neighbouring rates misses the third by this much for each factor e between the third
 * and its neighbour: 4.8 °C at 15 °C/h, 5.1 at 150 (measured in tests/core/cones/cone-kinetics.test.ts).
 */
const RATE_SCATTER_C_PER_E_FOLD = 5;
/** A rate within this many factors e of the chart's is one of the chart's (chosen: 10 %). */
const OUTSIDE_TELLING_FOLDS = 0.1;
/**
 * Published hold rules run from 15 min to 2 h a cone (reference notes). So the range shows at least
 * half of what the holds added, and half a cone where they added that much or more. It is a least
 * width and not one more error to add up: the rules' conflict is no measured spread.
 */
const HOLD_SHARE = 0.5;
const HOLD_MOST_CONES = 0.5;
/** A hold that added less than this is no hold to speak of. */
const HOLD_TELLING_CONES = 0.05;

/** The cone's own scatter about its chart, or the chart's where the fit left no freedom. */
const scatterOf = ({ residuals }: ConeKinetics): number => {
  const squares = residuals.reduce((sum, { residualC }) => sum + residualC ** 2, 0);
  return Math.max(Math.sqrt(squares / residuals.length), chartScatterC());
};

/** The scatter of the two cones that bracket a place. */
const chartSigma = (cones: readonly ConeKinetics[], place: number): number => {
  const above = cones.findIndex(({ position }) => position > place);
  const hotter = cones[above] ?? cones.at(-1)!;
  const cooler = cones[above - 1] ?? hotter;
  return (scatterOf(cooler) + scatterOf(hotter)) / 2;
};

/** How many factors of e a rate lies outside the rates its chart was made at. */
const outsideBy = (coneType: ConeType, rateCPerHour: number | null): number => {
  if (rateCPerHour === null || rateCPerHour <= 0) return 0;
  const rates = chartedRates(coneType);
  const [slowest, fastest] = [Math.min(...rates), Math.max(...rates)];
  return Math.max(0, Math.log(slowest / rateCPerHour), Math.log(rateCPerHour / fastest));
};

interface ModelQuestion {
  readonly coneType: ConeType;
  readonly cones: readonly ConeKinetics[];
  readonly doses: readonly number[];
  /** What the holds near the top gave, of the same cones. */
  readonly holdDoses: readonly number[];
  readonly rateCPerHour: number | null;
}

/** Adds up what is uncertain besides the couple; see the constants for each source. */
export const modelSpread = (question: ModelQuestion): ModelSpread => {
  const { cones, doses, holdDoses } = question;
  const place = placeOf(cones, doses);
  const without = doses.map((dose, i) => Math.max(dose - holdDoses[i]!, 0));
  const addedCones = place - placeOf(cones, without);
  const holdCones = Math.min(HOLD_SHARE * addedCones, HOLD_MOST_CONES);
  const outside = outsideBy(question.coneType, question.rateCPerHour);
  return {
    sigmaC: Math.hypot(chartSigma(cones, place), RATE_SCATTER_C_PER_E_FOLD * outside),
    leastCones: addedCones >= HOLD_MOST_CONES ? HOLD_MOST_CONES : holdCones,
    outsideChart: outside > OUTSIDE_TELLING_FOLDS,
    holdsAdded: addedCones >= HOLD_TELLING_CONES,
  };
};
