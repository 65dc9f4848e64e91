import { MAX_COLUMNS } from '../limits.ts';
import { insideBracket } from './brackets.ts';
import { arrange, glueLabels } from './labels.ts';

/** What stands between cells, and what must be done to them. */
export interface Dialect {
  /**
   * One character, `blanks` for runs of blanks and tabs, `fixed` for cells of fixed width, or
   * `none` where every line is one cell. */
  readonly delimiter: string;
  /** Whether every whole line is wrapped in quotes, as some exports do by mistake. */
  readonly isWrapped: boolean;
  /** Where cells of fixed width begin, or null. */
  readonly cuts: readonly number[] | null;
  /** Where the decimal comma also separates cells: the cells that the next one belongs to. */
  readonly joins: { readonly cells: number; readonly firsts: readonly number[] } | null;
  /** The names that cells carry, `temp=25.5`, in the order of the cells; null where they do not. */
  readonly labels: readonly string[] | null;
  /** Whether every line is a bracket, `(2024-03-14, 25.5)`, or a statement that inserts one. */
  readonly isBracketed: boolean;
}

/** A dialect with nothing special about it. */
export const plainDialect = (delimiter: string, isWrapped = false): Dialect => ({
  ...{ delimiter, isWrapped, cuts: null, joins: null, labels: null, isBracketed: false },
});

export const BLANKS = 'blanks';
export const FIXED = 'fixed';
/** Every line is one cell. */
export const WHOLE = 'none';

export interface SplitLine {
  /** Trimmed, without quotes. */
  readonly cells: readonly string[];
  /** Whether a quote was opened and not closed before the line's end. */
  readonly isOpen: boolean;
  /** Whether something stands between a closing quote and the next delimiter. */
  readonly isLoose?: boolean;
}

const QUOTE = '"';
const isBlank = (character: string): boolean =>
  character === ' ' || character === '\t' || character === '\u00a0';

/**
 * A cell without `="…"`, by which some exports keep a spreadsheet from reading a number as a date,
 * and without the single quotes that others put around cells.
 */
const unguarded = (cell: string): string => {
  if (cell.length > 2 && cell.startsWith('="') && cell.endsWith('"')) return cell.slice(2, -1);
  if (cell.length > 1 && cell.startsWith("'") && cell.endsWith("'"))
    return cell.slice(1, -1).trim();
  return cell;
};

interface Cell {
  readonly text: string;
  /** Where the delimiter after it stands, or the line's end. */
  readonly end: number;
  readonly isOpen: boolean;
  readonly isLoose: boolean;
}

/** A cell that opens with a quote: up to its closing quote; two quotes inside stand for one. */
const quotedCell = (line: string, from: number, isEnd: (at: number) => boolean): Cell => {
  let at = from + 1;
  let text = '';
  for (;;) {
    const close = line.indexOf(QUOTE, at);
    if (close < 0) {
      return { text: text + line.slice(at), end: line.length, isOpen: true, isLoose: false };
    }
    text += line.slice(at, close);
    at = close + 1;
    if (line.charAt(at) !== QUOTE) break;
    text += QUOTE;
    at += 1;
  }
  let end = at;
  while (end < line.length && !isEnd(end)) end += 1;
  const rest = line.slice(at, end).trimEnd();
  return { text: text + rest, end, isOpen: false, isLoose: rest !== '' };
};

const splitAtMarks = (line: string, delimiter: string): SplitLine => {
  const cells: string[] = [];
  let at = 0;
  let isLoose = false;
  const isEnd = (index: number): boolean => line.charAt(index) === delimiter;
  while (cells.length < MAX_COLUMNS) {
    let start = at;
    while (isBlank(line.charAt(start)) && line.charAt(start) !== delimiter) start += 1;
    if (line.charAt(start) === QUOTE) {
      const cell = quotedCell(line, start, isEnd);
      cells.push(cell.text.trim());
      if (cell.isOpen) return { cells, isOpen: true };
      isLoose ||= cell.isLoose;
      at = cell.end;
    } else {
      const found = line.indexOf(delimiter, start);
      const end = found < 0 ? line.length : found;
      cells.push(unguarded(line.slice(start, end).trim()));
      at = end;
    }
    if (at >= line.length) break;
    at += 1;
  }
  return { cells, isOpen: false, isLoose };
};

const splitAtBlanks = (line: string): SplitLine => {
  const cells: string[] = [];
  const isEnd = (index: number): boolean => isBlank(line.charAt(index));
  let at = 0;
  while (cells.length < MAX_COLUMNS) {
    while (at < line.length && isBlank(line.charAt(at))) at += 1;
    if (at >= line.length) break;
    if (line.charAt(at) === QUOTE) {
      const cell = quotedCell(line, at, isEnd);
      cells.push(cell.text.trim());
      if (cell.isOpen) return { cells, isOpen: true };
      at = cell.end;
    } else {
      const start = at;
      while (at < line.length && !isBlank(line.charAt(at))) at += 1;
      cells.push(line.slice(start, at));
    }
  }
  return { cells, isOpen: false };
};

const splitAtCuts = (line: string, cuts: readonly number[]): SplitLine => ({
  cells: cuts.map((cut, index) => line.slice(cut, cuts[index + 1]).trim()),
  isOpen: false,
});

/** Puts the decimals back that a comma split off; only in rows that have all their cells. */
const joined = (split: SplitLine, joins: NonNullable<Dialect['joins']>): SplitLine => {
  if (split.cells.length !== joins.cells) return split;
  const cells = split.cells.flatMap((cell, index) => {
    if (joins.firsts.includes(index - 1)) return [];
    return joins.firsts.includes(index) ? [`${cell},${split.cells[index + 1]}`] : [cell];
  });
  return { ...split, cells };
};

const splitOnce = (line: string, dialect: Dialect): SplitLine => {
  if (dialect.cuts !== null) return splitAtCuts(line, dialect.cuts);
  const { delimiter, joins, labels } = dialect;
  const inside = dialect.isBracketed ? (insideBracket(line) ?? line) : line;
  const glued = labels === null ? inside : glueLabels(inside);
  const split =
    delimiter === BLANKS
      ? splitAtBlanks(glued)
      : splitAtMarks(glued, delimiter === WHOLE ? '\n' : delimiter);
  if (labels !== null) return { ...split, cells: arrange(split.cells, labels) };
  return joins === null ? split : joined(split, joins);
};

/**
 * The cells of one line. A quote counts only where a cell begins, so that an inch mark or a stray
 * quote inside a cell is a character like any other.
 */
export const splitLine = (line: string, dialect: Dialect): SplitLine => {
  if (!dialect.isWrapped) return splitOnce(line, dialect);
  const whole = quotedCell(line.trim(), 0, () => false);
  return line.trim().startsWith(QUOTE) ? splitOnce(whole.text, dialect) : splitOnce(line, dialect);
};

/** Whether a line is one quoted cell from its first to its last character, with marks inside. */
export const isWrappedLine = (line: string): boolean => {
  const bare = line.trim();
  if (bare.length < 3 || !bare.startsWith(QUOTE) || !bare.endsWith(QUOTE)) return false;
  const inner = bare.slice(1, -1);
  return !inner.replaceAll('""', '').includes(QUOTE) && /[,;\t|]/.test(inner);
};
