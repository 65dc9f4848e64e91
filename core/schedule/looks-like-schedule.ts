import { CSV_COLUMNS } from './read-csv.ts';

/** Columns that no log has. */
const ONLY_A_SCHEDULES: readonly string[] = ['rate_per_hour', 'hold_minutes'];

const isHeading = (line: string): boolean => {
  const names = line.split(/[,;\t]/).map((name) =>
    name
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .toLowerCase(),
  );
  return (
    names.some((name) => ONLY_A_SCHEDULES.includes(name)) ||
    (names.length > 1 && names.every((name) => CSV_COLUMNS.some((column) => column === name)))
  );
};

/**
 * Whether a text was meant to be a schedule, whole or faulty: JSON with segments, or a table with a
 * schedule's columns. Such a file is better refused as a schedule, with its line, than as a log.
 */
export const looksLikeSchedule = (text: string): boolean => {
  const bare = text.replace(/^\uFEFF/, '').trimStart();
  if (bare.startsWith('{')) return /"segments"\s*:/.test(bare);
  const heading = bare
    .split(/\r\n|\r|\n/)
    .find((line) => line.trim() !== '' && !line.trimStart().startsWith('#'));
  return heading !== undefined && isHeading(heading);
};
