import type { FigureName, Figures } from './detector.ts';

/**
 * How far a leg may be off its time. It is beyond the limit if it is off by `minutes`, or by `percent`
 * and at least `leastMinutes`: a share of a short leg is less than its ends are known to.
 */
export interface Limit {
  readonly percent: number;
  readonly leastMinutes: number;
  readonly minutes: number;
}

/** Those of the limits that a measured value reaches: no figure stands beside one that it keeps. */
export const reached = (measured: Figures, limits: Figures): Figures =>
  Object.fromEntries(
    Object.entries(limits).filter(
      ([name, limit]) => (measured[name as FigureName] ?? -Infinity) >= (limit ?? Infinity),
    ),
  );

/** Whether a leg that is off by so much, as a share and in time, is beyond a limit. */
export const isBeyond = (limit: Limit, offPercent: number, offMinutes: number): boolean =>
  offMinutes >= limit.minutes || (offPercent >= limit.percent && offMinutes >= limit.leastMinutes);
