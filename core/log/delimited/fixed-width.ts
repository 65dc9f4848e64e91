import { plainDialect, FIXED, type Dialect } from './split.ts';

/** Fewer lines than this say nothing of columns (chosen). */
const FEWEST_LINES = 4;
/** Of the lines with numbers, so many must leave a gutter blank (chosen): the rest may be spoilt. */
const NEARLY_ALL = 0.97;
const LONGEST_LINE = 1000;

const hasNumbers = (text: string): boolean => (text.match(/\d+/g)?.length ?? 0) >= 2;

/**
 * Cells of fixed width: where nearly all lines with numbers leave the same characters blank, cells
 * begin. Null if the lines show no such columns.
 */
export const findFixedWidth = (texts: readonly string[]): Dialect | null => {
  const lines = texts.filter(
    (text) => text.length <= LONGEST_LINE && !text.includes('\t') && hasNumbers(text),
  );
  if (lines.length < FEWEST_LINES) return null;
  const length = lines.reduce((most, line) => Math.max(most, line.length), 0);
  const filled = new Uint32Array(length);
  for (const line of lines) {
    for (let at = 0; at < line.length; at += 1) if (line.charCodeAt(at) > 0x20) filled[at]! += 1;
  }
  const most = (1 - NEARLY_ALL) * lines.length;
  const cuts: number[] = [];
  for (let at = 0; at < length; at += 1) {
    const isGutterBefore = at === 0 || filled[at - 1]! <= most;
    if (filled[at]! > most && isGutterBefore) cuts.push(at);
  }
  const [, ...inner] = cuts;
  return inner.length === 0 ? null : { ...plainDialect(FIXED), cuts: [0, ...inner] };
};
