import type { Schedule } from '../../core/model/schedule.ts';
import { isSameSchedule } from './schedule-draft.ts';

/** What a schedule is called until it is given a name, unless another is called that already. */
export const UNNAMED = 'My schedule';

/** The name itself where nothing has it yet, else with the lowest number from 2 that is free. */
export const freeName = (wanted: string, taken: readonly string[]): string => {
  let name = wanted;
  for (let number = 2; taken.includes(name); number++) name = `${wanted} ${number}`;
  return name;
};

/**
 * The schedule under a name that no different one has: schedules are kept by name, and a new one
 * must not take another's place unseen.
 */
export const namedApart = (schedule: Schedule, others: readonly Schedule[]): Schedule =>
  others.some((other) => isSameSchedule(other, schedule))
    ? schedule
    : {
        ...schedule,
        name: freeName(
          schedule.name,
          others.map(({ name }) => name),
        ),
      };
