import type { IntendedLeg } from '../schedule/intended-curve.ts';
import { capped } from './penalties.ts';

/** When a leg ends by the programme's clock, whether the kiln got there or not. */
export interface LegEnd {
  readonly endSeconds: number;
  /** How well the moment is known. */
  readonly slackSeconds: number;
  /** What it costs to believe that the programme went on without the kiln. */
  readonly cost: number;
  /** The programme was seen to move on then: the leg cannot go on past it, arrived or not. */
  readonly isSeen: boolean;
}

/** The ends of the intended legs by a clock, null where it says nothing. */
export type Clock = readonly (LegEnd | null)[];

/**
 * A programme that goes on by the clock although the kiln is behind is not the likeliest case, and
 * its start is known within some minutes (chosen).
 */
const PLAN_TRUST = { slackSeconds: 300, cost: 4, isSeen: false } as const;
/** A logged setpoint shows it (chosen: within a sample or two). */
export const SETPOINT_TRUST = { slackSeconds: 150, cost: 0, isSeen: true } as const;
/** Further from the clock than this is just off the clock. */
const OFF_CLOCK_AT_MOST = 45;

/**
 * The clock of the schedule itself: as if nothing waited for the kiln. It says nothing after a leg at
 * full power, whose length no schedule tells.
 */
export const plannedClock = (legs: readonly IntendedLeg[]): Clock => {
  const firstFree = legs.findIndex((leg) => leg.rateCPerHour === null);
  return legs.map(({ endSeconds }, k) =>
    firstFree < 0 || k < firstFree ? { endSeconds, ...PLAN_TRUST } : null,
  );
};

/**
 * What it costs that a leg ends at a moment although the kiln is short of its target: the programme
 * went on by its clock. Endless where there is no clock.
 */
export const clockCost = (end: LegEnd | null, momentSeconds: number): number =>
  end === null
    ? Infinity
    : end.cost + capped(momentSeconds - end.endSeconds, end.slackSeconds, OFF_CLOCK_AT_MOST);
