import { useMemo } from 'react';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { useSettled } from '../controls/use-settled.ts';
import { draftInHand, type HeldSchedule } from './drafts.ts';
import { UNNAMED } from './schedule-name.ts';
import {
  changedDraft,
  isSameSchedule,
  newDraft,
  readDraft,
  type DraftChange,
  type ScheduleDraft,
} from './schedule-draft.ts';

interface DraftInHand {
  /** Null while there is no schedule, whole or begun. */
  readonly draft: ScheduleDraft | null;
  readonly change: (by: DraftChange) => void;
  /** No schedule any more, neither told nor begun. */
  readonly takeAway: () => void;
  /** Tells at once what still waits for the typing to rest. */
  readonly settle: () => void;
}

interface DraftHolder {
  readonly schedule: Schedule | undefined;
  readonly held: HeldSchedule | null;
  readonly unit: TemperatureUnit;
  readonly onHeld: (held: HeldSchedule | null) => void;
  readonly onSchedule: (schedule: Schedule | undefined) => void;
}

/**
 * The schedule that is told, as a draft to be typed in. Each whole state of it is told once the
 * typing rests; a schedule told from elsewhere takes the draft's place.
 */
export const useScheduleDraft = (holder: DraftHolder): DraftInHand => {
  const { schedule, held, unit, onHeld, onSchedule } = holder;
  const draft = useMemo(() => draftInHand(held, schedule), [held, schedule]);
  const settled = useSettled<HeldSchedule>((whole) => {
    // The draft goes on beside the schedule it makes, and is not read from it anew.
    onHeld(whole);
    onSchedule(whole.told);
  });

  const change = (by: DraftChange): void => {
    const next = changedDraft(draft ?? newDraft(unit, UNNAMED), by);
    onHeld({ draft: next, told: schedule });
    const whole = readDraft(next).schedule;
    if (whole === null || isSameSchedule(whole, schedule)) settled.drop();
    else settled.soon({ draft: next, told: whole });
  };
  const takeAway = (): void => {
    settled.drop();
    onHeld(null);
    if (schedule !== undefined) onSchedule(undefined);
  };
  return { draft, change, takeAway, settle: settled.now };
};
