const OPENERS = '([{';
const CLOSERS = ')]}';
/** So many of the lines must be in brackets (chosen). */
const NEARLY_ALL = 0.8;
/** A statement's words before its values are not looked for beyond this (chosen). */
const LONGEST_HEAD = 600;

/** Where the values begin in a line that is one bracket, or one statement of SQL; -1 if it is none. */
const openingOf = (line: string): number => {
  if (OPENERS.includes(line.charAt(0))) return 0;
  const head = line.slice(0, LONGEST_HEAD);
  if (!/^insert\s/i.test(head)) return -1;
  const values = head.search(/\bvalues\b/i);
  return values < 0 ? -1 : line.indexOf('(', values);
};

/** What stands inside the bracket that a whole line is; null for any other line. */
export const insideBracket = (text: string): string | null => {
  const line = text.trim().replace(/[,;]$/, '').trimEnd();
  const from = line === '' ? -1 : openingOf(line);
  if (from < 0) return null;
  const kind = OPENERS.indexOf(line.charAt(from));
  return line.endsWith(CLOSERS.charAt(kind)) ? line.slice(from + 1, -1) : null;
};

/** Whether most lines are rows in brackets: tuples, lists, or statements that insert a row. */
export const areBracketed = (texts: readonly string[]): boolean => {
  const filled = texts.filter((text) => text.trim() !== '');
  const inside = filled.filter((text) => insideBracket(text)?.includes(',') === true);
  return filled.length > 1 && inside.length >= NEARLY_ALL * filled.length;
};

/** The names of the columns that a statement lists before its values; null without them. */
export const namesInStatement = (text: string): readonly string[] | null => {
  const head = text.slice(0, LONGEST_HEAD);
  const [, list] = /^\s*insert\s[^()]*\(([^()]*)\)\s*values\b/i.exec(head) ?? [];
  return list?.split(',').map((name) => name.trim().replace(/^["'`[]|["'`\]]$/g, '')) ?? null;
};
