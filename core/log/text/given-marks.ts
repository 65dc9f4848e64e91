import { fold } from './fold.ts';
import { parseNumber, type DecimalMark } from './number.ts';
import { parseQuantity } from './quantity.ts';

/** What a person says stands in cells that hold no reading. */
export interface GivenMarks {
  readonly numbers: ReadonlySet<number>;
  /** Whether a cell that is no number says so. */
  readonly isWord: (cell: string) => boolean;
}

const plain = (text: string): string => fold(text).trim();

/** Words are compared without case, accents and blanks at their ends; numbers by their value. */
export const makeGivenMarks = (
  marks: readonly string[] | undefined,
  decimalMark: DecimalMark,
): GivenMarks => {
  const numbers = new Set<number>();
  const words = new Set<string>();
  for (const mark of marks ?? []) {
    const cell = mark.trim();
    const number = parseNumber(cell, decimalMark);
    const value = Number.isNaN(number) ? parseQuantity(cell, decimalMark)?.value : number;
    if (value === undefined) words.add(plain(cell));
    else numbers.add(value);
  }
  return { numbers, isWord: words.size === 0 ? () => false : (cell) => words.has(plain(cell)) };
};
