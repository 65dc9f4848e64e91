import type { AlignedLeg, AnalysisDocument } from './document.ts';
import type { TraceSummary } from './trace.ts';

/** Why the record cannot tell of a leg: it begins too hot, or it ends before the kiln cooled. */
export type Unseen = 'begins-hot' | 'record-ends';

/** What the plan was laid on: the whole record, or of two joined logs the later one. */
export const planRecord = ({
  trace,
  joined,
}: Pick<AnalysisDocument, 'trace' | 'joined'>): Pick<
  TraceSummary,
  'startSeconds' | 'offSeconds'
> => (joined ? { ...trace, startSeconds: joined.startSeconds } : trace);

/**
 * Whether a leg that was not found could not have been: planned to end below the first reading of a
 * record that begins hot, or after the last of one that ends while firing. Null for a leg that was
 * found, and for one that the record would have shown.
 *
 * @param index of the leg in `legs`
 */
export const unseenLeg = (
  legs: readonly AlignedLeg[],
  index: number,
  { startSeconds, offSeconds }: Pick<TraceSummary, 'startSeconds' | 'offSeconds'>,
): Unseen | null => {
  const leg = legs[index];
  if (!leg || leg.actual !== null) return null;
  const first = legs.findIndex(({ actual }) => actual !== null);
  const last = legs.findLastIndex(({ actual }) => actual !== null);
  const firstC = legs[first]?.actual?.startC ?? -Infinity;
  if (startSeconds === null && index < first && leg.planned.endC <= firstC) return 'begins-hot';
  return offSeconds === null && first >= 0 && index > last ? 'record-ends' : null;
};

/**
 * Whether the record stops within a leg, so that nobody knows whether it got to its target: the last
 * leg found in a record that shows no cooling.
 *
 * @param index of the leg in `legs`
 */
export const isCutByRecord = (
  legs: readonly AlignedLeg[],
  index: number,
  { offSeconds }: Pick<TraceSummary, 'offSeconds'>,
): boolean =>
  offSeconds === null &&
  legs[index]?.verdict === 'not-reached' &&
  index === legs.findLastIndex(({ actual }) => actual !== null);
