import type { ColumnPlan } from '../columns/column-plan.ts';
import { READ, type RawColumns } from '../columns/raw-columns.ts';
import { parseNumber } from '../text/number.ts';
import type { LinesOf } from '../assemble/table-read.ts';
import { splitLine, type Dialect } from './split.ts';

/** More rows than this, or than a hundredth of all, are no marks (chosen). */
const MOST_MARKS = 20;

/** Whether a line holds little but zeros behind its time. */
const isHollow = (text: string, dialect: Dialect, plan: ColumnPlan): boolean => {
  const values = splitLine(text, dialect)
    .cells.map((cell) => parseNumber(cell, plan.decimalMark))
    .filter((value) => !Number.isNaN(value));
  return values.length > 2 && values.filter((value) => value === 0).length >= values.length / 2;
};

/**
 * Takes out the marks that some loggers write among the rows: where times count up from zero, a
 * negative whole number in place of the time and zeros behind it tell of the run and are no
 * reading. Returns how many there were.
 */
export const dropMarks = (
  columns: RawColumns,
  plan: ColumnPlan,
  dialect: Dialect,
  linesOf: LinesOf,
): number => {
  if (plan.time.form !== 'number') return 0;
  const negative: number[] = [];
  for (let row = 0; row < columns.length && negative.length <= MOST_MARKS; row += 1) {
    if (columns.state[row] === READ && columns.time[row]! < 0) negative.push(row);
  }
  const isRare = negative.length <= Math.max(2, Math.min(MOST_MARKS, columns.length / 100));
  if (negative.length === 0 || !isRare) return 0;
  const texts = linesOf(negative.map((row) => columns.line[row]!));
  const marks = negative.filter(
    (row, index) =>
      Number.isInteger(columns.time[row]!) && isHollow(texts[index] ?? '', dialect, plan),
  );
  columns.remove(marks);
  return marks.length;
};
