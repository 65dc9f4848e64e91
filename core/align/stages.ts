import type { IntendedLeg } from '../schedule/intended-curve.ts';
import type { Grid } from './grid.ts';
import { capped, tempered } from './penalties.ts';

/*
 * What it costs to say that a leg lasted from one grid point to another. All constants are chosen;
 * each says in the kiln's terms what it allows, and the benchmark of leg boundaries holds them.
 */

/** A kiln that follows arrives within a few degrees of a target. */
const ARRIVAL_C = 3;
/** Past this a target was just not reached, by however much. */
const NOT_REACHED = 40;
/** A followed ramp keeps its rate within a few per cent; a kiln that cannot follow is slower. */
const SLOW_SHARE = 0.25;
const SLOW_AT_MOST = 8;
/** No controller climbs faster than its programme, but for catching up. */
const FAST_SHARE = 0.06;
const FAST_AT_MOST = 40;
/** Holds are cut or drawn out by people and by late arrival. */
const HOLD_DURATION_SHARE = 0.4;
const HOLD_AT_MOST = 10;
const HOLD_SLACK_MINUTES = 4;
const HOLD_LEVEL_C = 4;
const LEVEL_AT_MOST = 40;
/** A leg that never happened. */
const SKIPPED = 22;
/** A log that begins hot never shows the legs below its first reading. */
const SKIPPED_BEFORE_LOG = 1;
const INTERRUPTION_KNEE = 60;

export interface Stage {
  /** The cost of the leg lasting from point `from` to point `to` (`from < to`). */
  cost(from: number, to: number): number;
  /** The cost of the leg not happening, at point `at`. */
  skip(at: number): number;
}

/** The misfit of a stretch about its own parabola: a followed leg is straight, a limited one bends. */
const shapeCost = (grid: Grid, from: number, to: number): number =>
  tempered(
    (0.5 * grid.pointWeight * grid.fits.parabolaSquares(from, to + 1)) / grid.rippleC ** 2,
    INTERRUPTION_KNEE,
  );

const rateCost = (actual: number, planned: number): number => {
  // A kiln that goes the wrong way is as wrong as can be.
  if (actual / planned <= 0.02) return FAST_AT_MOST;
  const departure = Math.log(actual / planned);
  return departure < 0
    ? capped(departure, SLOW_SHARE, SLOW_AT_MOST)
    : capped(departure, FAST_SHARE, FAST_AT_MOST);
};

const slopeBetween = (grid: Grid, from: number, to: number): number =>
  ((grid.celsius[to]! - grid.celsius[from]!) * 3600) /
  (grid.atSeconds[to]! - grid.atSeconds[from]!);

/** A climb or a controlled fall to its target. */
const movingStage = (grid: Grid, leg: IntendedLeg): Stage => {
  const direction = leg.kind === 'ramp' ? 1 : -1;
  return {
    cost: (from, to) => {
      const arrival = capped(grid.celsius[to]! - leg.endC, ARRIVAL_C, NOT_REACHED);
      const slope = direction * slopeBetween(grid, from, to);
      const rate =
        leg.rateCPerHour === null
          ? slope > 0
            ? 0
            : FAST_AT_MOST
          : rateCost(slope, direction * leg.rateCPerHour);
      return arrival + rate + shapeCost(grid, from, to);
    },
    skip: (at) =>
      at === 0 && grid.start === 0 && direction * (grid.celsius[0]! - leg.endC) > -ARRIVAL_C
        ? SKIPPED_BEFORE_LOG
        : SKIPPED,
  };
};

const holdStage = (grid: Grid, leg: IntendedLeg): Stage => {
  const level = leg.endC;
  const plannedMinutes = (leg.endSeconds - leg.startSeconds) / 60;
  return {
    cost: (from, to) => {
      const { fits, pointWeight, rippleC } = grid;
      const lastedMinutes = (grid.atSeconds[to]! - grid.atSeconds[from]!) / 60;
      const duration = Math.log(
        (lastedMinutes + HOLD_SLACK_MINUTES) / (plannedMinutes + HOLD_SLACK_MINUTES),
      );
      const mean = fits.mean(from, to + 1);
      const wander = fits.squaresAbout(mean, from, to + 1);
      return (
        capped(mean - level, HOLD_LEVEL_C, LEVEL_AT_MOST) +
        capped(duration, HOLD_DURATION_SHARE, HOLD_AT_MOST) +
        tempered((0.5 * pointWeight * wander) / rippleC ** 2, INTERRUPTION_KNEE)
      );
    },
    skip: (at) =>
      at === 0 && grid.start === 0 && grid.celsius[0]! > level + ARRIVAL_C
        ? SKIPPED_BEFORE_LOG
        : SKIPPED,
  };
};

/** The stage of an intended leg on a grid. */
export const stageOf = (grid: Grid, leg: IntendedLeg): Stage =>
  leg.kind === 'hold' ? holdStage(grid, leg) : movingStage(grid, leg);

/** Time before the programme: the kiln rests, or cools from an earlier firing, but does not climb. */
export const idleCost = (grid: Grid): Float64Array => {
  const costs = new Float64Array(grid.celsius.length);
  let lowest = Infinity;
  for (let i = 0; i < costs.length; i++) {
    lowest = Math.min(lowest, grid.celsius[i]!);
    // Nothing is said against resting until heating was seen to begin; every minute after it is.
    const late = Math.max(0, grid.atSeconds[i]! - grid.atSeconds[grid.start]!) / 600;
    costs[i] =
      capped(Math.max(0, grid.celsius[i]! - lowest - 2), 2, 80) + late + (late > 0 ? 3 : 0);
  }
  return costs;
};

/** Cooling that slows to this share of its later self has something else than nature in it. */
const NATURAL_SHARE = 0.7;
const UNNATURAL_POINT = 3;

/**
 * The cost of calling everything from a point on natural cooling: such cooling never climbs, and is
 * fastest where it is hottest, so a flat or slow stretch before a faster one is held against it.
 */
export const naturalCoolingCost = (grid: Grid): Float64Array => {
  const { celsius, atSeconds } = grid;
  const count = celsius.length;
  const costs = new Float64Array(count);
  let fastestLater = 0;
  for (let i = count - 2; i >= 0; i--) {
    const fall = ((celsius[i]! - celsius[i + 1]!) * 3600) / (atSeconds[i + 1]! - atSeconds[i]!);
    const rise = Math.max(0, celsius[i + 1]! - celsius[i]! - grid.rippleC);
    const lack = fastestLater > 0 ? Math.max(0, NATURAL_SHARE - fall / fastestLater) : 0;
    costs[i] =
      costs[i + 1]! +
      grid.pointWeight * UNNATURAL_POINT * Math.min(1, lack) +
      grid.pointWeight * capped(rise, grid.rippleC, 20);
    // One noisy step is no rate: the fastest is taken over three.
    const over = Math.min(count - 1, i + 3);
    const steady = ((celsius[i]! - celsius[over]!) * 3600) / (atSeconds[over]! - atSeconds[i]!);
    fastestLater = Math.max(fastestLater, steady);
  }
  return costs;
};
