const MOST_NAMES = 12;
const MOST_CHARS = 40;

/** A name from the file as it may stand in a sentence: one line, and not too long. */
const shown = (name: string): string => {
  const line = name.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ').trim();
  return line.length <= MOST_CHARS ? line : `${line.slice(0, MOST_CHARS - 1)}…`;
};

/** The names of columns as a list in quotes for a sentence; the first dozen of them. */
export const quotedNames = (names: readonly string[]): string => {
  if (names.length === 0) return 'none';
  const quoted = names.slice(0, MOST_NAMES).map((name) => `“${shown(name)}”`);
  return names.length > MOST_NAMES ? `${quoted.join(', ')} and more` : quoted.join(', ');
};
