import { mean } from '../numeric/statistics.ts';
import type { Grid } from './grid.ts';
import type { Laying, LayingTables } from './lay.ts';

/**
 * A leg that departs from its plan by this much cost agrees with it by 1/e. A followed leg costs 1
 * to 5, one that the kiln could not follow about 10, a wrong rate or a missed target 20 and more.
 */
const AGREEMENT_SCALE = 20;

/** The share of the recorded legs' time that looks like the legs it was taken for. */
const agreement = (grid: Grid, tables: LayingTables, laying: Laying): number => {
  const lastLaid = laying.legs.findLastIndex((leg) => leg !== null);
  let weight = 0;
  let agreeing = 0;
  laying.legs.slice(0, lastLaid + 1).forEach((leg, k) => {
    const stage = tables.stages[k]!;
    const lasted = leg === null ? 0 : grid.atSeconds[leg.to]! - grid.atSeconds[leg.from]!;
    // A leg that is missing between others weighs like an hour of disagreement, unless the record
    // could not have shown it.
    const isUnseen = leg === null && stage.skip(0) < 2;
    const cost = leg === null ? Infinity : stage.disagreement(leg.from, leg.to);
    const span = leg === null ? (isUnseen ? 0 : 3600) : lasted;
    weight += span;
    agreeing += span * Math.exp(-cost / AGREEMENT_SCALE);
  });
  return weight > 0 ? agreeing / weight : 0;
};

/**
 * How far the alignment can be trusted, from 0 to 1, as the product of two measured shares: how much
 * of the recorded time looks like the leg it was taken for (rate, arrival, straightness), and how
 * certain the boundaries are (the mean over them of the weight of all arrangements that agree
 * within six minutes). A schedule that is not the one that was run fails in the first; a record
 * in which several layings fit alike fails in the second. 0 where no leg was found at all.
 */
export const confidenceOf = (
  grid: Grid,
  tables: LayingTables,
  laying: Laying,
  certainties: readonly (number | null)[],
): number => {
  const known = certainties.filter((certainty) => certainty !== null);
  if (known.length === 0) return 0;
  return Math.min(1, Math.max(0, agreement(grid, tables, laying) * mean(known)));
};
