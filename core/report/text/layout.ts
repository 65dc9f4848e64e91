import { clean, prose } from '../clean.ts';

/** As wide as the text report gets: a terminal's usual 80 columns with a little room. */
export const TEXT_WIDTH = 88;

/** Breaks prose at blanks so that no line is longer than `width`, with `indent` before each. */
export const wrap = (text: string, indent = '', width = TEXT_WIDTH, hanging = indent): string[] => {
  const lines: string[] = [];
  let line = indent;
  let isEmpty = true;
  for (const word of prose(clean(text)).split(' ').filter(Boolean)) {
    if (!isEmpty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = hanging;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return (isEmpty ? lines : [...lines, line]).map((done) => done.replace(/\u00a0/g, ' '));
};

/** A sentence as an item of a list: a mark, and what follows set in under it. */
export const item = (text: string, mark = '-', width = TEXT_WIDTH): string[] =>
  wrap(text, `  ${mark} `, width, ' '.repeat(mark.length + 3));

/** One column of a table. */
export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
}

/** Rows laid in columns as wide as their longest cell, two blanks apart. */
export const table = (
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
): string[] => {
  const cells = [columns.map(({ head }) => head), ...rows.map((row) => row.map(clean))];
  const widths = columns.map((_, index) =>
    Math.max(...cells.map((row) => (row[index] ?? '').length)),
  );
  return cells.map((row) =>
    columns
      .map(({ align }, index) => {
        const text = row[index] ?? '';
        const width = widths[index] ?? 0;
        return align === 'right' ? text.padStart(width) : text.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  );
};
