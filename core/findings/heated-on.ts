import type { Alignment, Overshoot } from '../model/document.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../units.ts';

/** A kiln that climbed past its target instead of coasting to a stop there. */
export interface HeatedOn {
  readonly climbedOnMinutes: number;
  readonly climbedOnCPerHour: number;
}

/** Chosen: what is still given off by hot wire and brick has spent itself by then. */
const LEAST_MINUTES = 8;
/** Chosen: beyond what a controller is late by. */
const LEAST_OVER_C = 10;
/**
 * A kiln whose heat was cut at its target slows down from there, so that on the way to its peak it
 * makes clearly less than its approach did; one that makes this share of it was heated on (chosen).
 */
const APPROACH_SHARE = 0.9;

/** Whether a kiln heated on past the target of a segment, or of any where none is named. */
export const ranAway = (
  alignment: Alignment | null,
  overshoots: readonly Overshoot[],
  segment: number | null = null,
): boolean =>
  alignment !== null &&
  overshoots.some(
    (over) => (segment === null || over.segment === segment) && heatedOn(alignment, over) !== null,
  );

/** How a kiln heated on past a target; null where it coasted. */
export const heatedOn = (
  { legs }: Alignment,
  { segment, overC, atSeconds }: Overshoot,
): HeatedOn | null => {
  const approach = legs.find((leg) => leg.segment === segment && leg.kind === 'ramp')?.actual;
  if (!approach) return null;
  const seconds = atSeconds - approach.endSeconds;
  const climbedOnMinutes = seconds / SECONDS_PER_MINUTE;
  const climbedOnCPerHour = (overC * SECONDS_PER_HOUR) / seconds;
  const isHeated =
    climbedOnMinutes >= LEAST_MINUTES &&
    overC >= LEAST_OVER_C &&
    climbedOnCPerHour >= APPROACH_SHARE * approach.rateCPerHour;
  return isHeated ? { climbedOnMinutes, climbedOnCPerHour } : null;
};
