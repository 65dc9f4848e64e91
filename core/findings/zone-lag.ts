import type { ZoneColumn } from '../model/log.ts';
import type { Trace } from '../model/trace.ts';
import { median } from '../numeric/statistics.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../units.ts';

/** Temperatures are compared in steps of this: a couple's own error hardly changes within (chosen). */
const STEP_C = 50;
/** Slower than this a lag of minutes does not show in a degree (chosen). */
const MOVING_C_PER_HOUR = 30;
/** So many readings in each direction make a step's medians worth comparing (chosen). */
const FEWEST_READINGS = 5;
/** Fewer steps than this could be one odd stretch (chosen). */
const FEWEST_STEPS = 3;

/** How the main couple ran against another place, heating and cooling held apart. */
export interface ZoneLag {
  readonly channel: string;
  /** By how much the main couple follows later; negative if the other place does. */
  readonly lagMinutes: number;
  /** Main minus other while heating and while cooling, over the same temperatures. */
  readonly heatingDeltaC: number;
  readonly coolingDeltaC: number;
}

interface Side {
  readonly deltaC: number[];
  readonly slopeCPerHour: number[];
}

interface Step {
  readonly heating: Side;
  readonly cooling: Side;
}

const emptySide = (): Side => ({ deltaC: [], slopeCPerHour: [] });

const stepsOf = (trace: Trace, { celsius }: ZoneColumn): Step[] => {
  const steps = new Map<number, Step>();
  for (let i = 0; i < celsius.length; i++) {
    const slope = trace.slopeCPerHour[i]!;
    if (!Number.isFinite(celsius[i]) || Math.abs(slope) < MOVING_C_PER_HOUR) continue;
    const key = Math.floor(trace.smoothC[i]! / STEP_C);
    const step = steps.get(key) ?? { heating: emptySide(), cooling: emptySide() };
    steps.set(key, step);
    const side = slope > 0 ? step.heating : step.cooling;
    side.deltaC.push(trace.celsius[i]! - celsius[i]!);
    side.slopeCPerHour.push(slope);
  }
  return [...steps.values()].filter(
    ({ heating, cooling }) =>
      Math.min(heating.deltaC.length, cooling.deltaC.length) >= FEWEST_READINGS,
  );
};

/**
 * The lag that explains how the main couple and another place part: a couple that follows τ late
 * reads τ·slope low while heating and as much high while cooling, whatever constant or
 * temperature-bound error it has besides, which is the same both ways and falls out at each
 * temperature. Null where the two directions do not share enough temperatures.
 */
export const zoneLag = (trace: Trace, zone: ZoneColumn): ZoneLag | null => {
  const steps = stepsOf(trace, zone);
  if (steps.length < FEWEST_STEPS) return null;
  const of = (side: (step: Step) => number[]) => steps.map((step) => median(side(step)));
  const heatingDelta = of(({ heating }) => heating.deltaC);
  const coolingDelta = of(({ cooling }) => cooling.deltaC);
  const heatingSlope = of(({ heating }) => heating.slopeCPerHour);
  const coolingSlope = of(({ cooling }) => cooling.slopeCPerHour);
  const lagHours = steps.map(
    (_, k) => (coolingDelta[k]! - heatingDelta[k]!) / (heatingSlope[k]! - coolingSlope[k]!),
  );
  return {
    channel: zone.channel,
    lagMinutes: (median(lagHours) * SECONDS_PER_HOUR) / SECONDS_PER_MINUTE,
    heatingDeltaC: median(heatingDelta),
    coolingDeltaC: median(coolingDelta),
  };
};
