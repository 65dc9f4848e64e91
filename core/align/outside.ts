import { SECONDS_PER_HOUR } from '../units.ts';
import type { Grid } from './grid.ts';
import { capped } from './penalties.ts';

/*
 * What it costs to leave a stretch of the record out of the schedule: the rest before heating and
 * the natural cooling after it.
 */

/** A kiln that climbs is not at rest: dearer than any arrangement of legs (chosen). */
const CLIMBED_AT_REST = 1000;

/** Time before the programme: the kiln rests, or cools from an earlier firing, but does not climb. */
export const idleCost = (grid: Grid): Float64Array => {
  const costs = new Float64Array(grid.celsius.length);
  let lowest = Infinity;
  for (let i = 0; i < costs.length; i++) {
    lowest = Math.min(lowest, grid.celsius[i]!);
    // Nothing is said against resting until heating was seen to begin; every minute after it is.
    const late = Math.max(0, grid.atSeconds[i]! - grid.atSeconds[grid.start]!) / 600;
    costs[i] =
      capped(Math.max(0, grid.celsius[i]! - lowest - 2), 2, CLIMBED_AT_REST) +
      late +
      (late > 0 ? 3 : 0);
  }
  return costs;
};

/** Cooling that is slower than this share of what comes later has more than nature in it. */
const NATURAL_SHARE = 0.7;
const UNNATURAL_POINT = 3;
/** Cooling rates are taken over this many points, within twice their error. */
const RATE_POINTS = 8;
const RATE_ERRORS = 2;
/** Cooling that has not fallen this far before the record ends was hardly seen to begin (chosen). */
const SURE_FALL_C = 20;
const UNSEEN_COOLING = 10;

/** How fast the course falls from each point on, over a few points, and that rate's error. */
const fallFrom = (grid: Grid, i: number): { rate: number; error: number } => {
  const to = Math.min(grid.celsius.length, i + RATE_POINTS);
  const hours = (grid.atSeconds[to - 1]! - grid.atSeconds[i]!) / SECONDS_PER_HOUR;
  const points = to - i;
  if (points < 3 || hours <= 0) return { rate: 0, error: Infinity };
  const error = (grid.rippleC * Math.sqrt(12)) / (hours * Math.sqrt(points));
  return { rate: -grid.fits.line(i, to).ratePerHour, error };
};

/**
 * The cost of calling everything from a point on natural cooling: such cooling never climbs, and is
 * fastest where it is hottest, so a flat or slow stretch before a faster one is held against it.
 */
export const naturalCoolingCost = (grid: Grid): Float64Array => {
  const { celsius } = grid;
  const count = celsius.length;
  const costs = new Float64Array(count);
  let fastestLater = 0;
  for (let i = count - 2; i >= 0; i--) {
    const { rate, error } = fallFrom(grid, i);
    const allowed = RATE_ERRORS * error;
    const lack = fastestLater > 0 ? NATURAL_SHARE - (rate + allowed) / fastestLater : 0;
    const climb = Math.max(0, -rate - allowed) / error;
    const unnatural = UNNATURAL_POINT * Math.min(1, Math.max(0, lack)) + capped(climb, 1, 20);
    costs[i] = costs[i + 1]! + grid.pointWeight * unnatural;
    fastestLater = Math.max(fastestLater, rate - allowed);
  }
  const lastC = celsius[count - 1]!;
  return costs.map((cost, i) => {
    const unseen = Math.max(0, 1 - (celsius[i]! - lastC) / SURE_FALL_C);
    return cost + UNSEEN_COOLING * unseen;
  });
};
