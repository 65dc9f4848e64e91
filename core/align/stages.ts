import { SECONDS_PER_HOUR } from '../units.ts';
import type { IntendedLeg } from '../schedule/intended-curve.ts';
import { KINK_REACH, type Grid } from './grid.ts';
import { capped, tempered } from './penalties.ts';

/*
 * What it costs to say that a leg lasted from one grid point to another. All constants are chosen;
 * each says in the kiln's terms what it allows, and the benchmark of leg boundaries holds them.
 */

/** A kiln that follows arrives within a few degrees of a target. */
const ARRIVAL_C = 3;
/** Past this a target was just not reached, and by how much hardly matters … */
const NOT_REACHED_KNEE = 25;
/** … and at last not at all: a firing may stop anywhere. */
const NOT_REACHED_AT_MOST = 45;
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
/** A kiln settles into a hold over some minutes; its wander is wider than a ramp's ripple. */
const HOLD_RIPPLE_FACTOR = 2;
const LEVEL_AT_MOST = 40;
/** A leg that never happened. */
const SKIPPED = 22;
/** A log that begins hot never shows the legs below its first reading. */
const SKIPPED_BEFORE_LOG = 1;
const INTERRUPTION_KNEE = 25;

export interface Stage {
  /** The cost of the leg lasting from point `from` to point `to` (`from < to`). */
  cost(from: number, to: number): number;
  /** The cost of the leg not happening, at point `at`. */
  skip(at: number): number;
}

/** To call a leg one that the kiln could not follow costs something. */
const LIMITED = 3;
/** A limited leg that is no parabola may depart from one by this many ripples. */
const LIMITED_RIPPLE_FACTOR = 4;

/**
 * The misfit of a stretch about its own shape: a followed leg is straight; one that the kiln could
 * not follow bends, but smoothly, so that only kinks within it speak against it.
 */
const shapeCost = (grid: Grid, from: number, to: number): number => {
  const { fits, kinks, pointWeight, rippleC } = grid;
  const followed = fits.line(from, to + 1).squares / rippleC ** 2;
  const first = from + KINK_REACH;
  const last = to + 1 - KINK_REACH;
  const limited = last > first ? kinks[last]! - kinks[first]! : 0;
  const bent = fits.parabolaSquares(from, to + 1) / (LIMITED_RIPPLE_FACTOR * rippleC) ** 2;
  const half = 0.5 * pointWeight;
  const cost = Math.min(half * followed, LIMITED + half * Math.min(limited, bent));
  return tempered(cost, INTERRUPTION_KNEE);
};

const arrivalCost = (shortC: number): number =>
  Math.min(tempered(0.5 * (shortC / ARRIVAL_C) ** 2, NOT_REACHED_KNEE), NOT_REACHED_AT_MOST);

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

/** A controller that waits lets the kiln creep the last few degrees before it goes on (chosen). */
const CREEP_C = 10;
const CREEP = 3;
const CREEP_PER_MINUTE = 0.1;

/** For each point, where the course came within creeping distance of a level and stayed there. */
const creepBegins = (grid: Grid, levelC: number): Int32Array => {
  const begins = new Int32Array(grid.celsius.length);
  let began = -1;
  for (let i = 0; i < begins.length; i++) {
    const isNear = Math.abs(grid.celsius[i]! - levelC) <= CREEP_C;
    if (!isNear) began = -1;
    else if (began < 0) began = i;
    begins[i] = isNear ? began : i;
  }
  return begins;
};

/**
 * A climb or a controlled fall to its target. Where no hold follows, the kiln may creep at its end;
 * where one does, creeping is the hold's.
 */
const movingStage = (grid: Grid, leg: IntendedLeg, holds: boolean): Stage => {
  const direction = leg.kind === 'ramp' ? 1 : -1;
  const begins = creepBegins(grid, leg.endC);
  const courseCost = (from: number, to: number): number => {
    const slope = direction * slopeBetween(grid, from, to);
    if (leg.rateCPerHour !== null) {
      return rateCost(slope, direction * leg.rateCPerHour) + shapeCost(grid, from, to);
    }
    return (slope > 0 ? 0 : FAST_AT_MOST) + shapeCost(grid, from, to);
  };
  return {
    cost: (from, to) => {
      const arrival = arrivalCost(grid.celsius[to]! - leg.endC);
      const plain = courseCost(from, to);
      const near = Math.max(begins[to]!, from + 1);
      if (holds || near >= to || plain <= CREEP) return arrival + plain;
      const minutes = (grid.atSeconds[to]! - grid.atSeconds[near]!) / 60;
      const crept = CREEP + CREEP_PER_MINUTE * minutes;
      return arrival + (crept >= plain ? plain : Math.min(plain, crept + courseCost(from, near)));
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
        tempered(
          (0.5 * pointWeight * wander) / (HOLD_RIPPLE_FACTOR * rippleC) ** 2,
          INTERRUPTION_KNEE,
        )
      );
    },
    skip: (at) =>
      at === 0 && grid.start === 0 && grid.celsius[0]! > level + ARRIVAL_C
        ? SKIPPED_BEFORE_LOG
        : SKIPPED,
  };
};

/** The stages of intended legs on a grid. */
export const stagesOf = (grid: Grid, legs: readonly IntendedLeg[]): Stage[] =>
  legs.map((leg, k) =>
    leg.kind === 'hold'
      ? holdStage(grid, leg)
      : movingStage(grid, leg, legs[k + 1]?.kind === 'hold'),
  );

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
