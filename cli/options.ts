import { parseCone } from '../core/model/cone.ts';
import type { Options } from '../core/model/options.ts';
import { Refusal } from '../core/model/refusal.ts';
import { readDecisions } from '../core/log/rules.ts';
import { readSchedule } from '../core/schedule/read-schedule.ts';
import { basename } from 'node:path';
import { readScheduleFile } from '../electron/host/files.ts';
import type { Asked } from './command.ts';
import { jobError } from './run-job.ts';
import type { JobError } from './job.ts';

/** What was told about the firing, or which of it could not be used. */
export type Told =
  { readonly options: Options } | { readonly of: string; readonly error: JobError };

const NO_SUCH_CONE =
  'there is no such cone; cones run from 022 up to 01 and from 1 up to 14, with 05.5 and 5.5';

/**
 * Reads the schedule and the cone that every log of the command is held against, and takes what was
 * said on how the logs are to be read: in the file of decisions, and by options, which override it.
 */
export const toldOptions = async (asked: Asked): Promise<Told> => {
  const { schedule, cone, readingFile } = asked;
  const options: Options = {};
  try {
    const kept = readingFile === null ? {} : readDecisions(await readScheduleFile(readingFile));
    const reading = { ...kept, ...asked.reading };
    if (Object.keys(reading).length > 0) options.reading = reading;
  } catch (cause) {
    return { of: readingFile ?? '--reading', error: jobError(cause) };
  }
  if (cone !== null) {
    const known = parseCone(cone);
    const of = `--cone ${cone}`;
    if (known === null) return { of, error: jobError(new Refusal('unknown-cone', NO_SUCH_CONE)) };
    options.cone = known;
  }
  if (schedule !== null) {
    try {
      options.schedule = readSchedule(await readScheduleFile(schedule), basename(schedule));
    } catch (cause) {
      return { of: schedule, error: jobError(cause) };
    }
  }
  return { options };
};
