import type { HistoryStep } from '../model/history.ts';
import { celsiusDelta } from '../units.ts';
import type { FiringEntry, Ranged } from './entry.ts';

/** Common practice: half a cone is a usual tolerance, some 10 °C about cone 6. */
const LEAST_DELTA_C = 10;

interface Seen extends Ranged {
  readonly firing: number;
}

const halfOf = ({ low, high }: Ranged): number => (high - low) / 2;

/** Whether two firings' errors part by more than their ranges and the least that counts. */
const part = (a: Seen, b: Seen): boolean =>
  Math.abs(b.value - a.value) >= Math.max(LEAST_DELTA_C, Math.hypot(halfOf(a), halfOf(b)));

/**
 * Where witness cones say that the couple suddenly reads otherwise: changed for another, moved, or
 * its offset set anew. A firing that the next one takes back was misread cones, and no step.
 */
export const coupleSteps = (entries: readonly FiringEntry[]): HistoryStep[] => {
  const seen = entries.flatMap(({ coupleError }, firing): Seen[] =>
    coupleError === null ? [] : [{ ...coupleError, firing }],
  );
  return seen.flatMap((here, i): HistoryStep[] => {
    const before = seen[i - 1];
    const next = seen[i + 1];
    if (before === undefined || !part(before, here)) return [];
    const isTakenBack = next !== undefined && part(here, next) && !part(before, next);
    const isReturn = i > 1 && part(seen[i - 2]!, before) && !part(seen[i - 2]!, here);
    if (isTakenBack || isReturn) return [];
    const coupleDeltaC = celsiusDelta(here.value - before.value);
    return [{ kind: 'couple', firing: here.firing, powerPercent: null, coupleDeltaC }];
  });
};
