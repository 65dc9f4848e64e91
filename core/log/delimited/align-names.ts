/** A word of a line and the characters that it covers. */
interface Word {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const wordsIn = (line: string, gap: RegExp): Word[] => {
  const words: Word[] = [];
  let at = 0;
  for (const part of line.split(gap)) {
    const text = part.trim();
    const from = line.indexOf(text, at);
    if (text !== '') words.push({ text, from, to: from + text.length });
    at = from + text.length;
  }
  return words;
};

/** How far two stretches are apart; less than 0 if they overlap. */
const distance = (one: Word, other: Word): number =>
  Math.max(one.from, other.from) - Math.min(one.to, other.to);

/** As many words as columns are their names in order: over wide gaps, else over any. */
const inOrder = (header: string, width: number): readonly string[] | null => {
  const wide = wordsIn(header.trimEnd(), /\s{2,}|\t/);
  if (wide.length === width) return wide.map(({ text }) => text);
  const narrow = wordsIn(header.trimEnd(), /\s/);
  return narrow.length === width ? narrow.map(({ text }) => text) : null;
};

/**
 * The names over columns that blanks separate. Names may hold single blanks and cells may be empty,
 * so where their numbers differ the words go to the columns under which they stand: `rows` are
 * lines of the table as printed.
 */
export const alignNames = (
  header: string,
  rows: readonly string[],
  width: number,
): readonly string[] => {
  const ordered = inOrder(header, width);
  if (ordered !== null) return ordered;
  const columns = rows
    .map((row) => wordsIn(row, /\s/))
    .filter((words) => words.length === width)
    .reduce<Word[]>(
      (union, words) =>
        words.map((word, column) => ({
          text: '',
          from: Math.min(word.from, union[column]?.from ?? Infinity),
          to: Math.max(word.to, union[column]?.to ?? 0),
        })),
      [],
    );
  return underNearest(wordsIn(header.trimEnd(), /\s/), columns, width);
};

const underNearest = (
  words: readonly Word[],
  columns: readonly Word[],
  width: number,
): readonly string[] => {
  const names = Array.from({ length: width }, () => [] as string[]);
  for (const word of words) {
    const apart = columns.map((column) => distance(word, column));
    const nearest = apart.indexOf(Math.min(...apart));
    names[nearest]?.push(word.text);
  }
  return names.map((parts) => parts.join(' '));
};

/** The characters that the cells of a column fill, over all rows. */
const filledSpan = (rows: readonly string[], from: number, to: number): Word => {
  const spans = rows.map((row) => {
    const cell = row.slice(from, to);
    const start = cell.length - cell.trimStart().length;
    return { from: from + start, to: from + cell.trimEnd().length };
  });
  const filled = spans.filter((span) => span.to > span.from);
  return {
    text: '',
    from: Math.min(to, ...filled.map((span) => span.from)),
    to: Math.max(from, ...filled.map((span) => span.to)),
  };
};

/** The names over cells of fixed width: each word goes to the cells under which it stands. */
export const namesOverCuts = (
  header: string,
  rows: readonly string[],
  cuts: readonly number[],
): readonly string[] => {
  const ordered = inOrder(header, cuts.length);
  if (ordered !== null) return ordered;
  const columns = cuts.map((from, index) => filledSpan(rows, from, cuts[index + 1] ?? Infinity));
  return underNearest(wordsIn(header.trimEnd(), /\s/), columns, cuts.length);
};
