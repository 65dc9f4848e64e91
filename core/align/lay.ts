import type { IntendedLeg } from '../schedule/intended-curve.ts';
import type { Clock } from './clock.ts';
import type { Grid } from './grid.ts';
import { idleCost, naturalCoolingCost } from './outside.ts';
import { stagesOf, type Stage } from './stages.ts';

/** A firing that stops before its schedule does (chosen). */
const STOPPED_EARLY = 12;
const LEG_NEVER_BEGUN = 1.5;
/** A record that stops while the firing goes on (chosen). */
const RECORD_ENDS = 4;

/** Where a leg lies on the grid, or null where it never happened. */
export type Laid = { readonly from: number; readonly to: number } | null;

export interface Laying {
  readonly legs: readonly Laid[];
  /** The point at which natural cooling begins; null where the record ends before it. */
  readonly off: number | null;
  /** The least cost, in units of half a squared standard deviation. */
  readonly cost: number;
}

/** What the search knew; {@link boundaryCertainties} reads from it how clear-cut the laying is. */
export interface LayingTables {
  readonly stages: readonly Stage[];
  /** best[k][point]: the least cost of having the first k legs behind one at a point. */
  readonly best: readonly Float64Array[];
  /** endings[k][point]: the cost of no further leg happening after the first k, from a point on. */
  readonly endings: readonly Float64Array[];
  readonly origin: readonly Int32Array[];
}

const SKIP = -1;

/** Extends the best arrangements of the earlier legs by one more leg. */
const extend = (previous: Float64Array, stage: Stage): [Float64Array, Int32Array] => {
  const count = previous.length;
  const best = new Float64Array(count);
  const origin = new Int32Array(count);
  for (let to = 0; to < count; to++) {
    let least = previous[to]! + stage.skip(to);
    let from = SKIP;
    for (let i = 0; i < to; i++) {
      // A leg's cost is never negative, so what is dearer already need not be tried.
      if (previous[i]! >= least) continue;
      const cost = previous[i]! + stage.cost(i, to);
      if (cost >= least) continue;
      least = cost;
      from = i;
    }
    best[to] = least;
    origin[to] = from;
  }
  return [best, origin];
};

/** What it costs that after some legs, at some point, no further leg came. */
const endingCosts = (grid: Grid, total: number): Float64Array[] => {
  const cooling = naturalCoolingCost(grid);
  const last = grid.celsius.length - 1;
  return Array.from({ length: total + 1 }, (_, done) => {
    const left = total - done;
    const never = LEG_NEVER_BEGUN * left;
    const stopped = (left > 0 ? STOPPED_EARLY : 0) + never;
    const costs = cooling.map((cost) => cost + stopped);
    costs[last] = grid.reachesEnd ? RECORD_ENDS + never : Infinity;
    return costs;
  });
};

const fill = (grid: Grid, legs: readonly IntendedLeg[], clock: Clock): LayingTables => {
  const stages = stagesOf(grid, legs, clock);
  const best = [idleCost(grid)];
  const origin: Int32Array[] = [];
  for (const stage of stages) {
    const [next, from] = extend(best.at(-1)!, stage);
    best.push(next);
    origin.push(from);
  }
  return { stages, best, origin, endings: endingCosts(grid, legs.length) };
};

/** The cheapest way to end: after how many legs, and where. */
const cheapestEnding = ({ best, endings }: LayingTables) => {
  let ending = { done: 0, at: 0, cost: Infinity };
  endings.forEach((costs, done) => {
    costs.forEach((cost, at) => {
      const total = best[done]![at]! + cost;
      if (total < ending.cost) ending = { done, at, cost: total };
    });
  });
  return ending;
};

/**
 * Lays the legs of a schedule on the grid: the arrangement of ordered boundaries that costs least
 * over all arrangements, found by dynamic programming. Any leg may be missing; the firing may stop
 * early and the record may end early.
 */
export const layLegs = (
  grid: Grid,
  legs: readonly IntendedLeg[],
  clock: Clock,
): { laying: Laying; tables: LayingTables } => {
  const tables = fill(grid, legs, clock);
  const ending = cheapestEnding(tables);
  const laid: Laid[] = legs.map(() => null);
  let to = ending.at;
  for (let k = ending.done - 1; k >= 0; k--) {
    const from = tables.origin[k]![to]!;
    if (from === SKIP) continue;
    laid[k] = { from, to };
    to = from;
  }
  const isRecordEnd = ending.at === grid.celsius.length - 1;
  const laying = { legs: laid, off: isRecordEnd ? null : ending.at, cost: ending.cost };
  return { laying, tables };
};
