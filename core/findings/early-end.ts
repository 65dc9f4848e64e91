import type { Alignment } from '../model/document.ts';
import type { TraceSummary } from '../model/trace.ts';
import { coolsByItself, unfinished, type Unfinished } from './legs.ts';

/** Chosen: half as long again as nearly every boundary between legs is known to (6 min). */
export const LEFT_MINUTES = 10;

/**
 * What was left of the schedule when the firing stopped; null where it ran through, where the record
 * shows no cooling, and where nothing but the last hold was cut: that is a short hold's to tell, which
 * measures it better.
 */
export const endsEarly = (
  alignment: Alignment,
  { offSeconds }: Pick<TraceSummary, 'offSeconds'>,
): Unfinished | null => {
  if (offSeconds === null || !coolsByItself(alignment)) return null;
  const left = unfinished(alignment);
  const isLastHold = left.legs.length === 1 && left.legs[0]?.kind === 'hold';
  return left.minutes < LEFT_MINUTES || isLastHold ? null : left;
};
