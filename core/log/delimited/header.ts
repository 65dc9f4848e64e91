import type { Survey, SurveyedLine } from './survey.ts';
import { fitsKinds } from './survey.ts';
import { isNumberClass, isTimeClass } from '../text/cell-class.ts';
import { fold } from '../text/fold.ts';
import { unitOfText } from '../text/unit-text.ts';

/** Where a table stands in the head of the file. Indices count lines from 0. */
export interface TablePlace {
  /** Headers with rows below them: more than one if the file holds several tables. */
  readonly tables: number;
  /** The header's lines from the top; empty if there is none. */
  readonly header: readonly number[];
  readonly firstRow: number;
}

const MOST_HEADER_LINES = 8;
/** Blank lines, tags and spoilt rows that may stand between the header and the first good row. */
const MOST_LINES_BETWEEN = 6;

const COMMENT_SIGNS = /^[#;%!*/']+\s*/;

const filledCells = ({ cells }: SurveyedLine): string[] => cells.filter((cell) => cell !== '');

/** A line's cells as names: without the comment sign that may stand before the first. */
export const headerCells = (line: SurveyedLine): readonly string[] => {
  const [first = '', ...rest] = line.cells;
  const bare = first.replace(COMMENT_SIGNS, '');
  return [bare, ...rest];
};

/** Words, and no numbers or times; more than half of the cells are no mere dashes. */
const hasWords = ({ classes }: SurveyedLine): boolean => {
  const words = classes.filter((kind) => kind === 'text').length;
  const marks = classes.filter((kind) => kind === 'mark').length;
  return words > marks && !classes.some((kind) => isNumberClass(kind) || isTimeClass(kind));
};

/** Whether the names of places are numbers: `Time, 1, 2, 3`. */
const isNumbered = ({ cells, classes }: SurveyedLine): boolean => {
  const first = classes.findIndex((kind) => kind !== 'empty');
  const rest = cells.slice(first + 1).filter((cell) => cell !== '');
  const isCount = rest.every((cell, index) => Number(cell) === index + 1);
  return classes[first] === 'text' && rest.length > 1 && isCount;
};

/** Whether a line could hold the names of a table of this width. */
const isHeaderLike = (line: SurveyedLine, survey: Survey): boolean => {
  const filled = filledCells(line).length;
  if (survey.width === 1) return filled === 1 && hasWords(line) && headerCells(line).length === 1;
  if (filled < 2 || (!hasWords(line) && !isNumbered(line))) return false;
  const cells = headerCells(line).length;
  const isRightWidth = cells >= survey.width - 1 && cells <= survey.width + 2;
  return isRightWidth && filled >= Math.max(2, Math.ceil(survey.width / 2));
};

/** A pattern such as `hh:mm:ss` or `DD/MM/YYYY`, which stands among units. */
const PATTERN = /^[hmsdyHMSDYTJAf]{1,4}(?:[:./ -][hmsdyHMSDYTJAf]{1,4})*$/;

/** Units in at least half of the cells; dashes and patterns of times are no words either. */
const isUnits = ({ cells, classes }: SurveyedLine): boolean => {
  const filled = cells.filter((cell, column) => cell !== '' && classes[column] !== 'mark');
  const units = filled.filter((cell) => unitOfText(cell) !== null).length;
  const patterns = filled.filter((cell) => PATTERN.test(cell)).length;
  return units > 0 && units + patterns >= 0.5 * filled.length;
};

/** A further header line above (or below) one: as wide, and filled in at least half. */
const continuesHeader = (line: SurveyedLine, header: SurveyedLine, survey: Survey): boolean => {
  const filled = filledCells(line).length;
  if (filled < Math.max(2, Math.ceil(survey.width / 2)) && !isUnits(line)) return false;
  // Times belong to a head of keys and values, whose lines may be as wide.
  if (line.classes.some(isTimeClass)) return false;
  const isSameWidth = line.cells.length === header.cells.length;
  const isShorterUnits = isUnits(line) || isUnits(header);
  const isNear = Math.abs(line.cells.length - header.cells.length) <= 2;
  return isSameWidth || (isShorterUnits && isNear);
};

/** A row of units, be it only one of them, where names stand right above. */
const isUnitsBelow = (line: SurveyedLine, survey: Survey): boolean =>
  isUnits(line) &&
  Math.abs(line.cells.length - survey.width) <= 2 &&
  !line.classes.some(isNumberClass);

const isComment = (line: SurveyedLine): boolean => COMMENT_SIGNS.test(line.cells[0] ?? '');

/** The lines of the header whose lowest line is `lowest`. */
const wholeHeader = (lowest: number, survey: Survey): number[] => {
  const lines = [lowest];
  const bottom = survey.lines[lowest]!;
  for (let index = lowest - 1; index >= 0 && lines.length < MOST_HEADER_LINES; index -= 1) {
    const line = survey.lines[index]!;
    if (isComment(line) !== isComment(bottom)) break;
    if (!continuesHeader(line, bottom, survey) || fitsAsRow(line, survey)) break;
    lines.unshift(index);
  }
  return lines;
};

const fitsAsRow = (line: SurveyedLine, survey: Survey): boolean =>
  fitsKinds(line, survey) &&
  line.classes.some((kind) => isNumberClass(kind) || isTimeClass(kind)) &&
  line.cells.length >= survey.width - 1;

interface Found extends Omit<TablePlace, 'tables'> {
  readonly key: string;
  rows: number;
}

const keyOf = (header: readonly number[], survey: Survey): string =>
  fold(header.map((index) => survey.lines[index]!.cells.join('\u0001')).join('\u0002'));

/**
 * Finds the table in the head of the file: of the headers that stand above good rows, the one with
 * the most rows, and of equals the first. Rows before any header belong to none.
 */
export const placeTable = (survey: Survey, headLines: number): TablePlace | null => {
  const rows = new Set(survey.rows);
  const found = new Map<string, Found>();
  let header: number[] = [];
  let pending: number | null = null;
  for (let index = 0; index < headLines; index += 1) {
    const line = survey.lines[index]!;
    if (rows.has(index)) {
      if (pending !== null) {
        const isNear = index - pending <= MOST_LINES_BETWEEN + 1;
        header = isNear ? wholeHeader(pending, survey) : [];
        pending = null;
      }
      const key = keyOf(header, survey);
      const known = found.get(key);
      if (known === undefined) found.set(key, { key, header, firstRow: index, rows: 1 });
      else known.rows += 1;
    } else if (
      isHeaderLike(line, survey) ||
      (pending === index - 1 && isUnitsBelow(line, survey))
    ) {
      // A line of units under the names belongs to them; the lowest line is where the header ends.
      pending = index;
    }
  }
  const ranked = [...found.values()].sort((one, other) => other.rows - one.rows);
  return ranked[0] === undefined ? null : { ...ranked[0], tables: ranked.length };
};

/** The header when the person names its line: that line and the row of units that may follow. */
export const placeGivenHeader = (
  survey: Survey,
  header: number | null,
  headLines: number,
): TablePlace | null => {
  const after = header === null ? 0 : header + 1;
  const firstRow = survey.rows.find((index) => index >= after && index < headLines);
  if (firstRow === undefined) return null;
  if (header === null) return { header: [], firstRow, tables: 1 };
  const below = survey.lines[after];
  const hasUnits = below !== undefined && after < firstRow && isUnits(below);
  return { header: hasUnits ? [header, after] : [header], firstRow, tables: 1 };
};

/** Which of the header's lines is the row of units, or null. */
export const unitsLine = (header: readonly number[], survey: Survey): number | null =>
  header.slice(1).findLast((index) => isUnits(survey.lines[index]!)) ?? null;
