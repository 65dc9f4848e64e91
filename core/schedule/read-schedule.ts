import type { Schedule } from '../model/schedule.ts';
import { badSchedule } from './bounds.ts';
import { readCsvSchedule } from './read-csv.ts';
import { readJsonSchedule } from './read-json.ts';

const bareName = (fileName: string): string =>
  fileName.replace(/^.*[\\/]/, '').replace(/(\.schedule)?\.[^.]*$/, '');

/**
 * Reads a schedule file's text in either of the project's two forms, told apart by its first
 * character. The file's name, without its endings, names a schedule that does not name itself.
 *
 * @throws Refusal `bad-schedule` or `unknown-cone` with a plain sentence and the line to blame.
 */
export const readSchedule = (text: string, fileName: string): Schedule => {
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') throw badSchedule('the schedule file is empty');
  if (bare.includes('\0')) throw badSchedule('this is not a text file');
  const read = /^\s*[[{]/.test(bare) ? readJsonSchedule : readCsvSchedule;
  return read(bare, bareName(fileName));
};
