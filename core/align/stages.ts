import { isFreeClimb, type IntendedLeg } from '../schedule/intended-curve.ts';
import { clockCost, type Clock, type LegEnd } from './clock.ts';
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
/** To say that a kiln ran away from its hold on the hot side (chosen). */
const RUNAWAY = 18;
/** … and by how much it seldom does. */
const RUNAWAY_C = 40;
const RUNAWAY_AT_MOST = 60;
/** A full-power climb that follows a hold begins within this of its level (chosen: a settling). */
const SETTLED_C = 8;
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
  /**
   * How far a laid leg departs from what was meant, in the same units: as its cost, but that an
   * interruption counts once, however long, since it makes no other leg of it, and that the bend
   * with which a climb at full power begins counts nothing.
   */
  disagreement(from: number, to: number): number;
}

/** What an interrupted leg's shape is at most held against it when agreement is asked for. */
const INTERRUPTED = 20;

/**
 * A kiln that is given all its power turns upwards within so long, wire and air before the brick: no
 * interruption of the climb (chosen: from cold a quarter of an hour).
 */
const ONSET_SECONDS = 900;

/** To call a leg one that the kiln could not follow costs something. */
const LIMITED = 3;
/** A limited leg that is no parabola may depart from one by this many ripples. */
const LIMITED_RIPPLE_FACTOR = 4;

/**
 * The misfit of a stretch about its own shape: a followed leg is straight; one that the kiln could
 * not follow bends, but smoothly, so that only kinks within it, past its onset, speak against it.
 */
const shapeCost = (grid: Grid, from: number, to: number, onset = 0): number => {
  const { fits, kinks, pointWeight, rippleC } = grid;
  const followed = fits.line(from, to + 1).squares / rippleC ** 2;
  const first = from + onset + KINK_REACH;
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

/** A leg that the record's end cuts off is short of its target through no fault of its own. */
const UNDER_WAY = 2;
const isRecordEnd = (grid: Grid, to: number): boolean =>
  grid.reachesEnd && to === grid.celsius.length - 1;

/** A kiln this far from where a leg was to begin has something to make up. */
const CATCHING_UP_C = 5;
/** A kiln is seldom further behind a clock than this, or the programme was another one. */
const FAR_BEHIND_C = 40;
const FAR_BEHIND_AT_MOST = 30;
/** … and may outrun its programme at this cost. */
const CATCHING_UP = 12;

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
const movingStage = (grid: Grid, leg: IntendedLeg, holds: boolean, clock: LegEnd | null): Stage => {
  const direction = leg.kind === 'ramp' ? 1 : -1;
  const begins = creepBegins(grid, leg.endC);
  const paceCost = (from: number, to: number): number => {
    const slope = direction * slopeBetween(grid, from, to);
    if (leg.rateCPerHour === null) return slope > 0 ? 0 : FAST_AT_MOST;
    const pace = rateCost(slope, direction * leg.rateCPerHour);
    const behindC = direction * (leg.startC - grid.celsius[from]!);
    const catchingUp = slope > 0 && behindC > CATCHING_UP_C ? Math.min(pace, CATCHING_UP) : pace;
    return catchingUp + capped(Math.max(0, behindC), FAR_BEHIND_C, FAR_BEHIND_AT_MOST);
  };
  const endCost = (to: number): number => {
    // Where a hold follows, the kiln may come to its level after the programme has.
    if (clock?.isSeen === true && !holds) return clockCost(clock, grid.atSeconds[to]!);
    const shortC = direction * (leg.endC - grid.celsius[to]!);
    if (shortC > 0 && isRecordEnd(grid, to)) return UNDER_WAY;
    const arrival = arrivalCost(shortC);
    return shortC > 0 ? Math.min(arrival, clockCost(clock, grid.atSeconds[to]!)) : arrival;
  };
  const courseCost = (from: number, to: number): number =>
    paceCost(from, to) + shapeCost(grid, from, to);
  const cost = (from: number, to: number): number => {
    const arrival = endCost(to);
    const plain = courseCost(from, to);
    const near = Math.max(begins[to]!, from + 1);
    if (holds || near >= to || plain <= CREEP) return arrival + plain;
    const minutes = (grid.atSeconds[to]! - grid.atSeconds[near]!) / 60;
    const crept = CREEP + CREEP_PER_MINUTE * minutes;
    return arrival + (crept >= plain ? plain : Math.min(plain, crept + courseCost(from, near)));
  };
  const onset = leg.rateCPerHour === null ? Math.round(ONSET_SECONDS / grid.spacingSeconds) : 0;
  return {
    cost,
    disagreement: (from, to) => {
      const shape = Math.min(INTERRUPTED, shapeCost(grid, from, to, onset));
      const excess = Math.max(0, shapeCost(grid, from, to) - shape);
      return Math.max(0, cost(from, to) - excess);
    },
    skip: (at) =>
      at === 0 && grid.start === 0 && direction * (grid.celsius[0]! - leg.endC) > -ARRIVAL_C
        ? SKIPPED_BEFORE_LOG
        : SKIPPED,
  };
};

const holdStage = (
  grid: Grid,
  leg: IntendedLeg,
  next: IntendedLeg | undefined,
  clock: LegEnd | null,
): Stage => {
  const level = leg.endC;
  const plannedMinutes = (leg.endSeconds - leg.startSeconds) / 60;
  const wanderCost = (from: number, to: number): number => {
    const { fits, pointWeight, rippleC } = grid;
    const wander = fits.squaresAbout(fits.mean(from, to + 1), from, to + 1);
    const spread = (HOLD_RIPPLE_FACTOR * rippleC) ** 2;
    return tempered((0.5 * pointWeight * wander) / spread, INTERRUPTION_KNEE);
  };
  const durationCost = (from: number, to: number): number => {
    const lastedMinutes = (grid.atSeconds[to]! - grid.atSeconds[from]!) / 60;
    const duration = Math.log(
      (lastedMinutes + HOLD_SLACK_MINUTES) / (plannedMinutes + HOLD_SLACK_MINUTES),
    );
    return capped(duration, HOLD_DURATION_SHARE, HOLD_AT_MOST);
  };
  const levelCost = (from: number, to: number): number => {
    const atClock = clockCost(clock, grid.atSeconds[to]!);
    if (clock?.isSeen === true) return atClock;
    const offLevel = capped(grid.fits.mean(from, to + 1) - level, HOLD_LEVEL_C, LEVEL_AT_MOST);
    return Math.min(offLevel, atClock);
  };
  /**
   * A kiln that runs on past its target and comes back, or not: a smooth course on the hot side. What
   * climbs on into a leg at full power is that leg.
   */
  const runawayCost = (from: number, to: number): number => {
    const { fits, pointWeight, rippleC, celsius } = grid;
    const hotC = fits.mean(from, to + 1) - level;
    if (hotC < 0 || (isFreeClimb(next) && celsius[to]! - level > SETTLED_C)) return Infinity;
    const spread = (HOLD_RIPPLE_FACTOR * rippleC) ** 2;
    const bent = (0.5 * pointWeight * fits.parabolaSquares(from, to + 1)) / spread;
    return RUNAWAY + capped(hotC, RUNAWAY_C, RUNAWAY_AT_MOST) + tempered(bent, INTERRUPTION_KNEE);
  };
  return {
    cost: (from, to) => {
      const stayed = levelCost(from, to) + wanderCost(from, to);
      const ran = stayed <= RUNAWAY ? Infinity : runawayCost(from, to);
      return durationCost(from, to) + Math.min(stayed, ran);
    },
    disagreement: (from, to) =>
      durationCost(from, to) + levelCost(from, to) + Math.min(wanderCost(from, to), INTERRUPTED),
    skip: (at) =>
      at === 0 && grid.start === 0 && grid.celsius[0]! > level + ARRIVAL_C
        ? SKIPPED_BEFORE_LOG
        : SKIPPED,
  };
};

/** The stages of intended legs on a grid, by a clock that may end them before the kiln is there. */
export const stagesOf = (grid: Grid, legs: readonly IntendedLeg[], clock: Clock): Stage[] =>
  legs.map((leg, k) => {
    const end = clock[k] ?? null;
    const next = legs[k + 1];
    if (leg.kind === 'hold') return holdStage(grid, leg, next, end);
    return movingStage(grid, leg, next?.kind === 'hold', end);
  });
