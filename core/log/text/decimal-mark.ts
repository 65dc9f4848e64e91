import type { ReasonId } from '../ids.ts';
import { isDottedClock } from '../time/dotted-clock.ts';
import type { DecimalMark } from './number.ts';

export interface DecimalDecision {
  readonly mark: DecimalMark;
  readonly why: ReasonId;
  readonly certainty: number;
}

const WITH_COMMA = /^[+-]?\d+,\d+(?:e[+-]?\d+)?(?:\D{0,12})$/i;
const WITH_DOT = /^[+-]?\d*\.\d+(?:e[+-]?\d+)?(?:\D{0,12})$/i;
const COMMA_AFTER_DOT = /^[+-]?\d{1,3}(?:\.\d{3})+,\d+$/;
const DOT_AFTER_COMMA = /^[+-]?\d{1,3}(?:,\d{3})+\.\d+$/;
/** Could be thousands as well as three decimals. */
const THREE_AFTER = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const PLAIN = /^[+-]?\d{1,3}$/;

/** A value without a mark that could stand in a column whose marked values are below ten. */
const LARGEST_BESIDE_DECIMALS = 100;

/**
 * Whether a column's marks separate thousands: three digits follow each, and the values without a
 * mark are hundreds, as in `998, 999, 1.000, 1.001`.
 */
const marksThousands = (cells: readonly string[], mark: DecimalMark): boolean => {
  const marked = cells.filter((cell) => cell.includes(mark) && /^[+-]?[\d.,]+$/.test(cell));
  if (marked.length === 0 || !marked.every((cell) => THREE_AFTER.test(cell))) return false;
  const plain = cells.filter((cell) => PLAIN.test(cell)).map((cell) => Math.abs(Number(cell)));
  return plain.some((value) => value >= LARGEST_BESIDE_DECIMALS);
};

/** Whether all numbers of a column are clocks with points: `13.30`. */
const isClocks = (cells: readonly string[]): boolean => {
  const numbers = cells
    .map((cell) => cell.replace(/\s?(?:uhr|h|uur|hrs)$/i, ''))
    .filter((cell) => /^[\d.,]+$/.test(cell));
  return numbers.length > 1 && numbers.every(isDottedClock) && new Set(numbers).size > 1;
};

/**
 * The decimal mark of a table, from its cells column by column. Where commas stand between cells,
 * only quoted cells can hold a decimal comma.
 */
export const decideDecimalMark = (columns: readonly (readonly string[])[]): DecimalDecision => {
  let commas = 0;
  let dots = 0;
  let sure: DecimalMark | null = null;
  const hasCommas = columns.some((cells) => cells.some((cell) => WITH_COMMA.test(cell)));
  for (const cells of columns) {
    // Points between the pairs of digits of a clock say nothing where numbers have commas.
    if (hasCommas && isClocks(cells)) continue;
    if (cells.some((cell) => COMMA_AFTER_DOT.test(cell))) sure = ',';
    else if (cells.some((cell) => DOT_AFTER_COMMA.test(cell))) sure = '.';
    const comma = cells.filter((cell) => WITH_COMMA.test(cell)).length;
    const dot = cells.filter((cell) => WITH_DOT.test(cell)).length;
    if (comma > 0 && marksThousands(cells, ',')) dots += comma;
    else if (dot > 0 && marksThousands(cells, '.')) commas += dot;
    else {
      commas += comma;
      dots += dot;
    }
  }
  if (sure !== null) return { mark: sure, why: 'rows-agree', certainty: 0.98 };
  if (commas + dots === 0) return { mark: '.', why: 'rows-agree', certainty: 0.9 };
  const mark = commas > dots ? ',' : '.';
  const share = Math.max(commas, dots) / (commas + dots);
  return { mark, why: 'rows-agree', certainty: 0.5 + 0.48 * (2 * share - 1) };
};
