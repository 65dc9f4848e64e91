/** A number as it was typed, or one plain sentence on why it is none. Null where nothing stands. */
export type TypedNumber = { readonly value: number } | { readonly wrong: string } | null;

const PLAIN = /^[+-]?(\d+\.?\d*|\.\d+)$/;
/** A comma before three digits may part thousands or decimals: nobody but the typist can know. */
const DOUBTFUL_COMMA = /^[+-]?[1-9]\d{0,2}(,\d{3})+$/;

/**
 * Reads a number as people type it: `1220`, `12.5`, `12,5`, `−3`. The machine's locale has no say, so
 * that the same keys mean the same everywhere.
 */
export const readNumber = (text: string): TypedNumber => {
  const bare = text.trim().replace(/^[−–]/, '-');
  if (bare === '') return null;
  if (DOUBTFUL_COMMA.test(bare)) {
    return { wrong: `Write ${bare.replaceAll(',', '')} without a mark between the thousands.` };
  }
  const pointed = bare.replace(',', '.');
  if (PLAIN.test(pointed)) return { value: Number(pointed) };
  return { wrong: `“${text.trim()}” is not a number.` };
};

/** A number as it stands in a field: at most `digits` decimals, no trailing zeros, a plain minus. */
export const numberText = (value: number, digits = 2): string => {
  const rounded = Number(value.toFixed(digits));
  return String(Object.is(rounded, -0) ? 0 : rounded);
};

/** Keeps a number within bounds. */
export const clamped = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);
