import { MOST_KEPT_SCHEDULES, zKeptSchedules, type KeptSchedules, type Sent } from './contract.ts';
import { keptJson } from './kept-json.ts';

const file = keptJson('schedules.json', zKeptSchedules);

/**
 * The schedules that a person opened or made, the last used first. Each is kept under its name: a
 * schedule of the same name takes its place. The oldest goes where there are too many.
 */
export const keptSchedules = {
  read: (folder: string): KeptSchedules => file.read(folder) ?? [],

  /** Keeps a schedule, in the place of an earlier state of it under another name if one is named. */
  keep: (folder: string, { schedule, insteadOf }: Sent<'keep-schedule'>): KeptSchedules => {
    const others = keptSchedules
      .read(folder)
      .filter(({ name }) => name !== schedule.name && name !== insteadOf);
    const kept = [schedule, ...others].slice(0, MOST_KEPT_SCHEDULES);
    file.keep(folder, kept);
    return kept;
  },

  forget: (folder: string, { name: forgotten }: Sent<'forget-schedule'>): KeptSchedules => {
    const kept = keptSchedules.read(folder).filter(({ name }) => name !== forgotten);
    file.keep(folder, kept);
    return kept;
  },
};
