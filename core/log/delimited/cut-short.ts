import { parseNumber, type DecimalMark } from '../text/number.ts';

/** A step so many times the usual one is a number cut short rather than a reading (chosen). */
const FAR = 10;

const decimalsOf = (cell: string, mark: DecimalMark): number => {
  const at = cell.lastIndexOf(mark);
  return at < 0 ? 0 : cell.length - at - 1;
};

/** What stands in the middle of a list once it is sorted; NaN for an empty one. */
const middle = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[values.length >> 1] ?? Number.NaN;

/** Whether a number has lost digits before its decimals: it stands far from the rows before. */
const isFar = (value: number, numbers: readonly number[]): boolean => {
  const steps = numbers.slice(1).map((number, index) => Math.abs(number - numbers[index]!));
  const usual = middle(steps.filter((step) => step > 0));
  return Math.abs(value - numbers[numbers.length - 1]!) > FAR * usual;
};

/**
 * Whether the last cell of a file that ends without a line end was cut short: it has fewer decimals
 * than most in its column, fewer digits and stands far from the rows before, or is shorter than all
 * where all are as long, as times are. `rows` are sampled, the last of them the row itself.
 */
export const isCutShort = (
  cells: readonly string[],
  column: number,
  rows: readonly (readonly string[])[],
  mark: DecimalMark,
): boolean => {
  const cell = cells[column] ?? '';
  const others = rows
    .slice(0, -1)
    .map((row) => row[column] ?? '')
    .filter((other) => /\d/.test(other));
  if (others.length === 0 || cell === '') return false;
  const value = parseNumber(cell, mark);
  const numbers = others.map((other) => parseNumber(other, mark));
  if (numbers.every(Number.isNaN)) {
    const [first = ''] = others;
    return others.every(({ length }) => length === first.length) && cell.length < first.length;
  }
  if (Number.isNaN(value)) return false;
  const usual = middle(others.map((other) => decimalsOf(other, mark)));
  if (decimalsOf(cell, mark) < usual) return true;
  const last = others[others.length - 1]!;
  return (
    cell.length < last.length &&
    isFar(
      value,
      numbers.filter((number) => !Number.isNaN(number)),
    )
  );
};
