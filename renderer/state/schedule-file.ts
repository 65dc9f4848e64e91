import { Refusal } from '../../core/model/refusal.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import type { OpenedSchedule } from '../host/host.ts';

/** A schedule file that could not be used. */
export interface ScheduleRefused {
  readonly fileName: string;
  readonly message: string;
  /** 1-based, where one line is to blame. */
  readonly line: number | null;
}

type ScheduleRead = { readonly schedule: Schedule } | { readonly refused: ScheduleRefused };

/** The schedule in a file, or why there is none. */
export const scheduleFrom = ({ fileName, text }: OpenedSchedule): ScheduleRead => {
  try {
    return { schedule: readSchedule(text, fileName) };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    const { message, line } = cause;
    return { refused: { fileName, message, line } };
  }
};

/** Why a schedule file could not be used, in one sentence. */
export const refusedText = ({ fileName, message, line }: ScheduleRefused): string => {
  const where = line === null ? '' : `, line ${line}`;
  return `The schedule “${fileName}” could not be used${where}: ${message}.`;
};
