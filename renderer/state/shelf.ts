import type { Schedule } from '../../core/model/schedule.ts';
import type { Host, KeptSchedules } from '../host/interface.ts';
import { isSameSchedule } from '../told/schedule-draft.ts';
import { UNNAMED } from '../told/schedule-name.ts';

const LONGEST_NAME = 200;

/** The schedule under the name by which it is kept. */
const named = (schedule: Schedule): Schedule => ({
  ...schedule,
  name: schedule.name.trim().slice(0, LONGEST_NAME) || UNNAMED,
});

const isRenamed = (before: Schedule | null, after: Schedule): boolean =>
  before !== null &&
  before.name !== after.name &&
  isSameSchedule({ ...before, name: after.name }, after);

/** The schedules that a person opened or made, as the host keeps them. */
export interface Shelf {
  /** Null where nothing was kept: a sample's, or a host that is gone. */
  readonly keep: (schedule: Schedule, how: 'opened' | 'made') => Promise<KeptSchedules | null>;
  readonly forget: (name: string) => Promise<KeptSchedules | null>;
}

/**
 * A shelf at the host. A schedule that is being made is kept in each whole state; under a new name
 * it takes the place of its former self.
 *
 * @param isBundled whether a schedule is a sample's, which is at hand anyway
 */
export const createShelf = (
  { keepSchedule, forgetSchedule }: Pick<Host, 'keepSchedule' | 'forgetSchedule'>,
  isBundled: (schedule: Schedule) => boolean,
): Shelf => {
  let lastMade: Schedule | null = null;
  // A host that is gone says so by itself; what is kept no longer matters then.
  const asked = (answer: Promise<KeptSchedules>): Promise<KeptSchedules | null> =>
    answer.catch(() => null);
  return {
    keep: (given, how) => {
      const schedule = named(given);
      const insteadOf = isRenamed(lastMade, schedule) ? (lastMade?.name ?? null) : null;
      lastMade = how === 'made' ? schedule : null;
      if (isBundled(schedule)) return Promise.resolve(null);
      return asked(keepSchedule(schedule, how === 'made' ? insteadOf : null));
    },
    forget: (name) => asked(forgetSchedule(name)),
  };
};
