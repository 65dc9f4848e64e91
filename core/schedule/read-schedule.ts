import type { Schedule } from '../model/schedule.ts';
import { badSchedule } from './bounds.ts';
import { readCsvSchedule } from './read-csv.ts';
import { readJsonSchedule } from './read-json.ts';

const bareName = (fileName: string): string =>
  fileName.replace(/^.*[\\/]/, '').replace(/(\.schedule)?\.[^.]*$/, '');

/** A JSON value that is no object and no list, and that no line of the CSV form begins with. */
const isBareJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/**
 * Reads a schedule file's text in either of the project's two forms, told apart by its first
 * character, or by being JSON as a whole. The file's name, without its endings, names a schedule that does not name itself.
 *
 * @throws Refusal `bad-schedule` or `unknown-cone` with a plain sentence and the line to blame.
 */
export const readSchedule = (text: string, fileName: string): Schedule => {
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') throw badSchedule('the schedule file is empty');
  if (bare.includes('\0')) throw badSchedule('this is not a text file');
  const read = /^\s*[[{]/.test(bare) || isBareJson(bare) ? readJsonSchedule : readCsvSchedule;
  return read(bare, bareName(fileName));
};
