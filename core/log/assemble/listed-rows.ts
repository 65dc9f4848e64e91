import { REJECTED_ROWS_LISTED, type RejectedRow } from '../../model/source.ts';
import { STATES, READ, type RawColumns } from '../columns/raw-columns.ts';
import { REJECTED_TEXT_CHARS } from '../limits.ts';
import type { TableRead } from './table-read.ts';

const capped = (text: string): string =>
  text.length <= REJECTED_TEXT_CHARS ? text : `${text.slice(0, REJECTED_TEXT_CHARS - 1)}…`;

/** How many rows were rejected, and the first of them with line, reason and text. */
export const listRejected = (
  columns: RawColumns,
  { lineOf, linesOf }: Pick<TableRead, 'lineOf' | 'linesOf'>,
): { count: number; listed: RejectedRow[] } => {
  const rows: number[] = [];
  let count = 0;
  for (let row = 0; row < columns.length; row += 1) {
    if (columns.state[row] === READ) continue;
    count += 1;
    if (rows.length < REJECTED_ROWS_LISTED) rows.push(row);
  }
  const lines = rows.map((row) => columns.line[row]!);
  const texts = linesOf(lines);
  const listed = rows.map((row, index) => ({
    line: lineOf(columns.line[row]!),
    reason: STATES[columns.state[row]!]!,
    text: capped(texts[index] ?? ''),
  }));
  return { count, listed };
};
