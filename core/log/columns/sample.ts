import type { PrintedUnit } from '../text/unit-text.ts';
import type { DecimalMark } from '../text/number.ts';
import { makeGivenMarks } from '../text/given-marks.ts';
import type { Preamble } from '../text/preamble.ts';
import { profileColumns, type ColumnProfile } from './profile.ts';

/** Sampled rows of a table of any shape, and what stands around it. */
export interface TableSample {
  readonly names: readonly string[];
  /** The line of the names, or else of the first row: to blame where a column is missing. */
  readonly line: number | null;
  /** Whether the names come from the file. */
  readonly isNamed: boolean;
  /** Other words that stand for a column: the single cells of a header of several lines. */
  readonly aliases: readonly (readonly string[])[];
  /** The unit that the header shows for each column. */
  readonly units: readonly (PrintedUnit | null)[];
  readonly rows: readonly (readonly string[])[];
  readonly decimalMark: DecimalMark;
  readonly preamble: Preamble;
  readonly profiles: readonly ColumnProfile[];
}

/** A mark that every reader knows, in the place of one that only the person knows. */
const KNOWN_MARK = '---';

/**
 * Completes a sample with the profiles of its columns. `noReadingMarks` are the words of the person
 * for no reading, which then count as marks.
 */
export const makeSample = (
  parts: Omit<TableSample, 'profiles'>,
  noReadingMarks?: readonly string[],
): TableSample => {
  const { isWord } = makeGivenMarks(noReadingMarks, parts.decimalMark);
  const rows =
    noReadingMarks === undefined
      ? parts.rows
      : parts.rows.map((row) => row.map((cell) => (isWord(cell) ? KNOWN_MARK : cell)));
  return { ...parts, rows, profiles: profileColumns(rows, parts.names.length, parts.decimalMark) };
};

/**
 * The column that a person means by a name: as the file has it, by one of its aliases, regardless
 * of case, or by its number counted from 1. Null if there is none.
 */
export const columnNamed = (sample: TableSample, wanted: string): number | null => {
  const exact = sample.names.indexOf(wanted);
  if (exact >= 0) return exact;
  const folded = wanted.trim().toLowerCase();
  const matches = (name: string): boolean => name.trim().toLowerCase() === folded;
  const loose = sample.names.findIndex(matches);
  if (loose >= 0) return loose;
  const alias = sample.aliases.findIndex((names) => names.some(matches));
  if (alias >= 0) return alias;
  const number = /^(?:column |#)?(\d{1,4})$/.exec(folded)?.[1];
  const column = number === undefined ? -1 : Number(number) - 1;
  return column >= 0 && column < sample.names.length ? column : null;
};
