import { classOf } from '../text/cell-class.ts';
import { plainDialect, type Dialect } from './split.ts';
import type { Survey } from './survey.ts';

/** Distinct digits behind a comma that make them decimals rather than a code (chosen). */
const MANY_DIGITS = 4;
/** So many lines above the rows are looked at for names. */
const LINES_ABOVE = 3;

const INTEGER = /^[+-]?\d+$/;
const DIGITS = /^\d{1,6}$/;

/** The column's cells in the rows of a survey. */
const cellsAt = (survey: Survey, column: number): string[] =>
  survey.rows.map((row) => survey.lines[row]!.cells[column] ?? '');

/** Whether whole numbers in one column could have their decimals in the next. */
const isPair = (survey: Survey, column: number): boolean => {
  const whole = cellsAt(survey, column);
  const decimals = cellsAt(survey, column + 1);
  return (
    whole.length > 1 &&
    whole.every((cell) => INTEGER.test(cell)) &&
    decimals.every((cell) => DIGITS.test(cell))
  );
};

/** Pairs from left to right that do not overlap, but for the columns that hold times. */
const pairsFrom = (survey: Survey): number[] => {
  const pairs: number[] = [];
  for (let column = 0; column + 1 < survey.width; column += 1) {
    if (!isPair(survey, column)) continue;
    pairs.push(column);
    column += 1;
  }
  return pairs;
};

/** Digits that decimals have and codes have not: zeros in front, or many different ones. */
const areDecimals = (cells: readonly string[]): boolean => {
  const [first = ''] = cells;
  const isEven = cells.every((cell) => cell.length === first.length);
  const hasZeros = cells.some((cell) => cell.length > 1 && cell.startsWith('0'));
  const falls = cells.filter((cell, index) => index > 0 && Number(cell) < Number(cells[index - 1]));
  const isRestless = falls.length > 0.2 * cells.length && new Set(cells).size >= MANY_DIGITS;
  return isEven && (hasZeros || isRestless);
};

/** How many names stand above the first row, if names do. */
const namesAbove = (survey: Survey): number | null => {
  const first = survey.rows[0] ?? 0;
  for (let index = first - 1; index >= Math.max(0, first - LINES_ABOVE); index -= 1) {
    const { cells } = survey.lines[index]!;
    const filled = cells.filter((cell) => cell !== '');
    const isWords = filled.every((cell) => ['text', 'mark'].includes(classOf(cell, '.')));
    if (filled.length > 1 && isWords)
      return cells[cells.length - 1] === '' ? cells.length - 1 : cells.length;
  }
  return null;
};

/**
 * Where commas stand both between cells and before decimals, unquoted: the dialect that puts the
 * numbers together again, or null if no number is torn. With names, there must be as many pairs as
 * cells without a name; without names, the digits themselves must look like decimals.
 */
export const joinCommas = (survey: Survey): Dialect | null => {
  if (survey.dialect.delimiter !== ',' || survey.width < 3) return null;
  const hasDots = survey.rows.some((row) =>
    survey.lines[row]!.cells.some((cell) => /^[+-]?\d+\.\d+$/.test(cell)),
  );
  if (hasDots) return null;
  const pairs = pairsFrom(survey);
  const names = namesAbove(survey);
  const missing = names === null ? null : survey.width - names;
  const firsts =
    missing === null || missing > pairs.length
      ? pairs.filter((column) => areDecimals(cellsAt(survey, column + 1)))
      : bestPairs(survey, pairs, missing);
  const isRight = missing === null ? firsts.length > 0 : missing > 0 && firsts.length === missing;
  if (!isRight) return null;
  return { ...plainDialect(',', survey.dialect.isWrapped), joins: { cells: survey.width, firsts } };
};

/** As many pairs as are needed, those first whose digits look most like decimals. */
const bestPairs = (survey: Survey, pairs: readonly number[], count: number): number[] =>
  [...pairs]
    .sort(
      (one, other) =>
        Number(areDecimals(cellsAt(survey, other + 1))) -
          Number(areDecimals(cellsAt(survey, one + 1))) || one - other,
    )
    .slice(0, count)
    .sort((one, other) => one - other);
