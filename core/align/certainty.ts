import type { Grid } from './grid.ts';
import type { Laying, LayingTables } from './lay.ts';

/** A boundary counts as certain to the extent that it must lie within this of where it was laid. */
export const CERTAIN_WITHIN_SECONDS = 360;
/** Arrangements dearer than the best by more than this weigh nothing (e⁻¹⁵). */
const NEGLIGIBLE = 15;

/**
 * The least cost of completing an arrangement from every boundary and point, worked backwards. Only
 * points through which an arrangement can still pass that is not negligibly worse are filled in.
 */
const completions = (tables: LayingTables, least: number): Float64Array[] => {
  const { best, stages, endings } = tables;
  const count = endings[0]!.length;
  const rest: Float64Array[] = endings.map((costs) => Float64Array.from(costs));
  for (let k = stages.length - 1; k >= 0; k--) {
    const stage = stages[k]!;
    const next = rest[k + 1]!;
    for (let from = 0; from < count; from++) {
      const limit = least + NEGLIGIBLE - best[k]![from]!;
      if (limit < 0) continue;
      let cheapest = Math.min(rest[k]![from]!, next[from]! + stage.skip(from));
      for (let to = from + 1; to < count; to++) {
        if (next[to]! >= Math.min(cheapest, limit)) continue;
        cheapest = Math.min(cheapest, next[to]! + stage.cost(from, to));
      }
      rest[k]![from] = cheapest;
    }
  }
  return rest;
};

/**
 * How certain the boundaries of a laying are: for each, the weight of all arrangements that put it
 * within {@link CERTAIN_WITHIN_SECONDS} of where the best one does, among all arrangements, an
 * arrangement's weight being e to the minus of its cost. In the order of the intended legs' ends.
 */
export const boundaryCertainties = (
  grid: Grid,
  tables: LayingTables,
  laying: Laying,
): (number | null)[] => {
  const rest = completions(tables, laying.cost);
  return laying.legs.map((leg, k) => {
    if (leg === null) return null;
    const at = grid.atSeconds[leg.to]!;
    let near = 0;
    let all = 0;
    for (let point = 0; point < grid.atSeconds.length; point++) {
      const excess = tables.best[k + 1]![point]! + rest[k + 1]![point]! - laying.cost;
      if (!(excess <= NEGLIGIBLE)) continue;
      const weight = Math.exp(-excess);
      all += weight;
      if (Math.abs(grid.atSeconds[point]! - at) <= CERTAIN_WITHIN_SECONDS) near += weight;
    }
    return all > 0 ? near / all : 0;
  });
};
