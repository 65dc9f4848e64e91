import { useEffect, useRef, useState } from 'react';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { useSettled } from '../controls/use-settled.ts';
import {
  changedDraft,
  draftOf,
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

/**
 * The schedule that is told, as a draft to be typed in. Each whole state of it is told once the
 * typing rests; a schedule told from elsewhere takes the draft's place.
 */
export const useScheduleDraft = (
  schedule: Schedule | undefined,
  unit: TemperatureUnit,
  onSchedule: (schedule: Schedule | undefined) => void,
): DraftInHand => {
  const [draft, setDraft] = useState(() => (schedule ? draftOf(schedule) : null));
  const told = useRef(schedule);
  const settled = useSettled<Schedule>((whole) => {
    told.current = whole;
    onSchedule(whole);
  });

  useEffect(() => {
    if (isSameSchedule(told.current, schedule)) return;
    settled.drop();
    told.current = schedule;
    setDraft(schedule ? draftOf(schedule) : null);
  }, [schedule]);

  const change = (by: DraftChange): void => {
    const next = changedDraft(draft ?? newDraft(unit), by);
    setDraft(next);
    const whole = readDraft(next).schedule;
    if (whole === null || isSameSchedule(whole, told.current)) settled.drop();
    else settled.soon(whole);
  };
  const takeAway = (): void => {
    settled.drop();
    setDraft(null);
    if (told.current === undefined) return;
    told.current = undefined;
    onSchedule(undefined);
  };
  return { draft, change, takeAway, settle: settled.now };
};
