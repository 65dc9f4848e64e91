import type { ObservedCone } from '../../core/model/options.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { AimDraft } from './cone-aim.ts';
import { draftOf, isSameSchedule, readDraft, type ScheduleDraft } from './schedule-draft.ts';

/** A schedule's draft, with the schedule that was told when it was last changed. */
export interface HeldSchedule {
  readonly draft: ScheduleDraft;
  readonly told: Schedule | undefined;
}

/** What was begun in the panel and is not told yet. It outlives the panel, which opens and closes. */
export interface Drafts {
  readonly schedule: HeldSchedule | null;
  readonly aim: AimDraft | null;
  /** Whether the form for a schedule from a cone is open. */
  readonly isAiming: boolean;
  /** A witness cone that is not added yet. */
  readonly witness: ObservedCone | null;
}

export const NO_DRAFTS: Drafts = { schedule: null, aim: null, isAiming: false, witness: null };

/**
 * The draft to go on with, beside what is told: the one held, unless another schedule was told from
 * elsewhere meanwhile. What is unfinished stays when its schedule only goes, as it does with its
 * firing.
 */
export const draftInHand = (
  held: HeldSchedule | null,
  told: Schedule | undefined,
): ScheduleDraft | null => {
  const stays =
    held !== null &&
    (isSameSchedule(held.told, told) ||
      (told === undefined && readDraft(held.draft).schedule === null));
  if (stays) return held.draft;
  return told === undefined ? null : draftOf(told);
};
