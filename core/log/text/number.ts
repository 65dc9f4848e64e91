import { MAX_VALUE_CHARS } from '../limits.ts';

export type DecimalMark = '.' | ',';

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const DOT = 46;
const COMMA = 44;

/** Marks between thousands beside the dot or comma that is not the decimal mark. */
const isNeutralGroupMark = (code: number): boolean =>
  code === 0x20 ||
  code === 0xa0 ||
  code === 0x202f ||
  code === 0x2009 ||
  code === 39 ||
  code === 0x2019;

const isMinus = (code: number): boolean => code === 45 || code === 0x2212;

/** Where the run of digits that starts at `at` ends. */
const digitsEnd = (text: string, at: number): number => {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end += 1;
  return end;
};

/**
 * The whole part with its thousands marks taken out (`1 050`, `1'050`, `1,050`), or null if the
 * marks do not stand before groups of three.
 */
const ungrouped = (
  text: string,
  from: number,
  mark: number,
): { digits: string; end: number } | null => {
  let end = digitsEnd(text, from);
  let digits = text.slice(from, end);
  const groupMark = text.charCodeAt(end);
  const opposite = mark === DOT ? COMMA : DOT;
  const isMark = groupMark === opposite || isNeutralGroupMark(groupMark);
  if (!isMark || !isDigit(text.charCodeAt(end + 1))) return { digits, end };
  if (digits.length < 1 || digits.length > 3) return null;
  while (text.charCodeAt(end) === groupMark) {
    const next = digitsEnd(text, end + 1);
    if (next - end !== 4) return null;
    digits += text.slice(end + 1, next);
    end = next;
  }
  return { digits, end };
};

/** Where the exponent that may start at `at` ends; `at` itself if there is none. */
const exponentEnd = (text: string, at: number): number => {
  if ((text.charCodeAt(at) | 32) !== 101) return at;
  const sign = text.charCodeAt(at + 1);
  const from = sign === 43 || sign === 45 ? at + 2 : at + 1;
  const end = digitsEnd(text, from);
  return end > from ? end : at;
};

/**
 * The number at the start of `text` and where it ends, or null if there is none: with sign,
 * thousands marks, decimals (`.5` and `5.` too) and exponent. The value is the double nearest to
 * the printed number.
 */
export const scanNumber = (
  text: string,
  decimalMark: DecimalMark,
): { value: number; end: number } | null => {
  const mark = decimalMark === '.' ? DOT : COMMA;
  const first = text.charCodeAt(0);
  const isNegative = isMinus(first);
  const whole = ungrouped(text, isNegative || first === 43 ? 1 : 0, mark);
  if (whole === null) return null;
  let end = whole.end;
  let decimals = '';
  if (text.charCodeAt(end) === mark) {
    const decimalsEnd = digitsEnd(text, end + 1);
    decimals = text.slice(end + 1, decimalsEnd);
    end = decimalsEnd;
  }
  if (whole.digits.length + decimals.length === 0) return null;
  const exponent = text.slice(end, exponentEnd(text, end));
  const value = Number(`${whole.digits || '0'}.${decimals || '0'}${exponent}`);
  if (!Number.isFinite(value)) return null;
  return { value: isNegative ? -value : value, end: end + exponent.length };
};

/** The number that a cell is, or NaN if it is anything else. */
export const parseNumber = (cell: string, decimalMark: DecimalMark): number => {
  if (cell.length === 0 || cell.length > MAX_VALUE_CHARS) return Number.NaN;
  const scanned = scanNumber(cell, decimalMark);
  return scanned !== null && scanned.end === cell.length ? scanned.value : Number.NaN;
};
