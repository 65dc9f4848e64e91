import type { FileContent, FileRole } from '../../electron/host/contract.ts';
import { MAX_FILE_BYTES } from '../../core/log/limits.ts';
import { Refusal } from '../../core/model/refusal.ts';
import { looksLikeSchedule } from '../../core/schedule/looks-like-schedule.ts';
import { MAX_SCHEDULE_BYTES, scheduleText } from '../../core/schedule/schedule-text.ts';
import type { Coming, Opened, OpenedLog, OpenedSchedule, RefusedFile } from './interface.ts';

/** A file on its way in, with what it was opened as. */
export interface FileIn {
  readonly fileName: string;
  readonly role: FileRole;
  readonly content: FileContent;
}

type Kind = { log: OpenedLog } | { schedule: OpenedSchedule } | { refused: RefusedFile };

/**
 * Whether a file that was not chosen as a schedule is one all the same, whole or faulty: by its name
 * or by what is in it. It is then better refused as a schedule than as a log.
 */
const isSchedule = (fileName: string, bytes: Uint8Array): boolean => {
  if (/\.schedule\.(json|csv)$/i.test(fileName)) return true;
  return bytes.length <= MAX_SCHEDULE_BYTES && looksLikeSchedule(scheduleText(bytes));
};

const asSchedule = (fileName: string, bytes: Uint8Array): Kind => {
  try {
    return { schedule: { fileName, text: scheduleText(bytes) } };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return { refused: { fileName, role: 'schedule', why: cause.message } };
  }
};

const kindOf = ({ fileName, role, content }: FileIn): Kind => {
  if ('refused' in content) return { refused: { fileName, role, why: content.refused } };
  const { bytes } = content;
  const schedule = role === 'schedule' || isSchedule(fileName, bytes);
  if (schedule) return asSchedule(fileName, bytes);
  return { log: { fileName, bytes } };
};

/** One firing goes by one schedule: of several, those before the last are not taken. */
const passedOver = (schedules: readonly OpenedSchedule[]): RefusedFile[] => {
  const taken = schedules.at(-1);
  if (!taken) return [];
  const why = `only one schedule is gone by, and “${taken.fileName}” was taken`;
  return schedules.slice(0, -1).map(({ fileName }) => ({ fileName, role: 'schedule', why }));
};

/** Files that came in together, logs told from schedules. */
export const opened = (files: readonly FileIn[]): Opened => {
  const kinds = files.map(kindOf);
  const schedules = kinds.flatMap((kind) => ('schedule' in kind ? [kind.schedule] : []));
  return {
    logs: kinds.flatMap((kind) => ('log' in kind ? [kind.log] : [])),
    schedule: schedules.at(-1) ?? null,
    refused: [
      ...kinds.flatMap((kind) => ('refused' in kind ? [kind.refused] : [])),
      ...passedOver(schedules),
    ],
  };
};

const WOULD_NOT = 'the system would not give this file; a folder cannot be opened, only files';

/** Takes a file that the page itself was given: dropped, pasted or picked in a browser. */
export const fileIn = async (file: File, role: FileRole): Promise<FileIn> => {
  const fileName = file.name;
  if (file.size > MAX_FILE_BYTES) {
    const refused = `the file is larger than ${MAX_FILE_BYTES / 1024 / 1024} MB`;
    return { fileName, role, content: { refused } };
  }
  try {
    return { fileName, role, content: { bytes: new Uint8Array(await file.arrayBuffer()) } };
  } catch {
    return { fileName, role, content: { refused: WOULD_NOT } };
  }
};

/** Takes files that the page itself was given. */
export const filesIn = (files: readonly File[], role: FileRole): Coming => ({
  fileNames: files.map(({ name }) => name),
  opened: Promise.all(files.map((file) => fileIn(file, role))).then(opened),
});
