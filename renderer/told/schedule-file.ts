import type { FileToSave } from '../../electron/host/contract.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import { writeCsvSchedule, writeJsonSchedule } from '../../core/schedule/write-schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';

/** A file's name stays well under what any system takes, with its ending. */
const LONGEST_STEM = 80;

/** A schedule's name as a file's: without what some system forbids in names. */
export const fileStem = (name: string): string =>
  name
    // eslint-disable-next-line no-control-regex -- these are what is looked for
    .replace(/[\\/:*?"<>|\u0000-\u001f\u007f]+/g, ' ')
    .replace(/\s+/g, ' ')
    .slice(0, LONGEST_STEM)
    .replace(/^[. ]+|[. ]+$/g, '') || 'schedule';

/** The schedule as a file to be saved, in the reader's unit. */
export const scheduleFile = (
  schedule: Schedule,
  format: 'json' | 'csv',
  unit: TemperatureUnit,
): FileToSave => ({
  fileName: `${fileStem(schedule.name)}.schedule.${format}`,
  ...(format === 'json'
    ? { kind: 'application/json', text: writeJsonSchedule(schedule, unit) }
    : { kind: 'text/csv', text: writeCsvSchedule(schedule, unit) }),
});
