import { classOf, isNumberClass, isTimeClass, type CellClass } from '../text/cell-class.ts';
import { decideDecimalMark, type DecimalDecision } from '../text/decimal-mark.ts';
import type { DecimalMark } from '../text/number.ts';
import { commonest } from './commonest.ts';
import { BLANKS, FIXED, splitLine, type Dialect } from './split.ts';

/** A sampled line as one dialect sees it. */
export interface SurveyedLine {
  readonly cells: readonly string[];
  readonly classes: readonly CellClass[];
  /** Empty cells before the first that is not. */
  readonly leading: number;
}

/** What a dialect makes of the sampled lines. */
export interface Survey {
  readonly dialect: Dialect;
  readonly decimal: DecimalDecision;
  /** Line by line, as the lines were given. */
  readonly lines: readonly SurveyedLine[];
  /** Indices of the lines that are rows of the table. */
  readonly rows: readonly number[];
  /** Cells in a row. */
  readonly width: number;
  /** Empty cells with which every row begins; more than none in nested tables. */
  readonly leading: number;
  /** The commonest class of each column. */
  readonly kinds: readonly CellClass[];
  readonly score: number;
}

const CELLS_LOOKED_AT = 128;
const FITS_SHARE = 0.75;

/** Splits and classifies one line. */
export const lookAt = (line: string, dialect: Dialect, mark: DecimalMark): SurveyedLine => {
  const { cells } = splitLine(line, dialect);
  const classes = cells.slice(0, CELLS_LOOKED_AT).map((cell) => classOf(cell, mark));
  const leading = cells.findIndex((cell) => cell.length > 0);
  return { cells, classes, leading: Math.max(0, leading) };
};

const countOf = (classes: readonly CellClass[], test: (kind: CellClass) => boolean): number =>
  classes.filter(test).length;

type Likeness = 'row' | 'labelled' | 'none';

/** Whether a line could be a row of readings; `labelled` ones begin with a word and have no time. */
const likeness = ({ classes }: SurveyedLine): Likeness => {
  const times = countOf(classes, isTimeClass);
  const numbers = countOf(classes, isNumberClass);
  const marks = countOf(classes, (kind) => kind === 'mark');
  const texts = countOf(classes, (kind) => kind === 'text');
  if (times > 0 && numbers + marks > 0) return 'row';
  if (texts === 0) return numbers > 0 || times > 0 ? 'row' : 'none';
  if (numbers < 2) return 'none';
  return classes.find((kind) => kind !== 'empty') === 'text' ? 'labelled' : 'row';
};

/** Lines that begin with a word are rows only if hardly any others could be. */
const candidates = (lines: readonly SurveyedLine[]): number[] => {
  const likenesses = lines.map(likeness);
  const rows = likenesses.filter((kind) => kind === 'row').length;
  const labelled = likenesses.filter((kind) => kind === 'labelled').length;
  const withLabelled = rows < 0.2 * labelled;
  return [...lines.keys()].filter(
    (index) => likenesses[index] === 'row' || (withLabelled && likenesses[index] === 'labelled'),
  );
};

/** The rows of the commonest shape; where shapes vary, all that begin alike. */
const rowsOfOneShape = (
  lines: readonly SurveyedLine[],
  indices: readonly number[],
  delimiter: string,
): { rows: number[]; width: number; leading: number } => {
  const leading = commonest(indices.map((index) => lines[index]!.leading))?.key ?? 0;
  const alike = indices.filter((index) => lines[index]!.leading === leading);
  const widths = commonest(alike.map((index) => lines[index]!.cells.length));
  if (widths === null) return { rows: [], width: 0, leading };
  // Among blanks a missing cell shifts the rest, so that only rows of one width are of one shape.
  if (delimiter === BLANKS || widths.count >= 0.6 * alike.length) {
    const rows = alike.filter((index) => lines[index]!.cells.length === widths.key);
    return { rows, width: widths.key, leading };
  }
  const width = alike.reduce((most, index) => Math.max(most, lines[index]!.cells.length), 0);
  return { rows: alike, width, leading };
};

const kindsOf = (
  lines: readonly SurveyedLine[],
  rows: readonly number[],
  width: number,
): CellClass[] =>
  Array.from({ length: Math.min(width, CELLS_LOOKED_AT) }, (_, column) => {
    const kinds = rows
      .map((index) => lines[index]!.classes[column] ?? 'empty')
      .filter((kind) => kind !== 'empty' && kind !== 'mark');
    return commonest(kinds)?.key ?? 'empty';
  });

const isOfKind = (found: CellClass, expected: CellClass): boolean =>
  found === expected ||
  found === 'mark' ||
  expected === 'text' ||
  (isNumberClass(found) && isNumberClass(expected));

/** Whether the cells of a line are of the kinds that the table's columns hold. */
export const fitsKinds = (
  line: SurveyedLine,
  survey: Pick<Survey, 'kinds' | 'leading'>,
): boolean => {
  if (line.leading < survey.leading) return false;
  let filled = 0;
  let fitting = 0;
  line.classes.forEach((kind, column) => {
    const expected = survey.kinds[column];
    if (kind === 'empty' || expected === undefined || expected === 'empty') return;
    filled += 1;
    if (isOfKind(kind, expected)) fitting += 1;
  });
  return filled > 0 && fitting >= FITS_SHARE * filled;
};

const scoreOf = (dialect: Dialect, rows: number, kinds: readonly CellClass[]): number => {
  const filled = kinds.filter((kind) => kind !== 'empty');
  const typed = filled.filter((kind) => kind !== 'text');
  const hasTime = kinds.some(isTimeClass);
  const numbers = countOf(kinds, isNumberClass);
  const isTable = (hasTime && numbers > 0) || numbers > 1;
  const neatness = 0.3 + (0.7 * typed.length) / Math.max(1, filled.length);
  // Blanks and columns stand in every text: a mark that does as well is the truer delimiter.
  const blanks = dialect.delimiter === BLANKS ? 0.9 : dialect.delimiter === FIXED ? 0.85 : 1;
  return rows * neatness * blanks * (isTable ? 1 : 0.2);
};

const columnsOf = (lines: readonly string[], dialect: Dialect): string[][] => {
  const rows = lines.map((line) => splitLine(line, dialect).cells);
  const width = rows.reduce((most, cells) => Math.max(most, cells.length), 0);
  return Array.from({ length: Math.min(width, CELLS_LOOKED_AT) }, (_, column) =>
    rows.map((cells) => cells[column] ?? '').filter((cell) => cell.length > 0 && cell.length <= 24),
  );
};

/** Looks at sampled lines through one dialect. */
export const surveyLines = (
  texts: readonly string[],
  dialect: Dialect,
  settled: DecimalDecision | null,
): Survey => {
  const decimal = settled ?? decideDecimalMark(columnsOf(texts, dialect));
  const lines = texts.map((text) => lookAt(text, dialect, decimal.mark));
  const { rows, width, leading } = rowsOfOneShape(lines, candidates(lines), dialect.delimiter);
  const kinds = kindsOf(lines, rows, width);
  const fitting = rows.filter((index) => fitsKinds(lines[index]!, { kinds, leading }));
  const score = scoreOf(dialect, fitting.length, kinds);
  return { dialect, decimal, lines, rows: fitting, width, leading, kinds, score };
};
