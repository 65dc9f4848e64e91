/** A run of text; `large` marks a number that matters, to be set larger where there is room. */
export interface Part {
  readonly text: string;
  readonly large: boolean;
}

/** One sentence, whole and in its parts. */
export interface Line {
  readonly text: string;
  readonly parts: readonly Part[];
}

/** Marks a number that matters. */
export const large = (text: string): Part => ({ text, large: true });

const partsOf = (value: string | Part | Line): readonly Part[] => {
  if (typeof value === 'string') return [{ text: value, large: false }];
  return 'parts' in value ? value.parts : [value];
};

/** Joins neighbouring parts of one kind and drops empty ones, so that a line has one form only. */
const merged = (parts: readonly Part[]): Part[] => {
  const joined: Part[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (part.text === '') continue;
    if (last?.large === part.large) {
      joined[joined.length - 1] = { text: last.text + part.text, large: last.large };
    } else joined.push(part);
  }
  return joined;
};

/** A sentence from text, marked numbers and other lines. */
export const lineOf = (...values: readonly (string | Part | Line)[]): Line => {
  const parts = merged(values.flatMap(partsOf));
  return { text: parts.map((part) => part.text).join(''), parts };
};

/** The template tag for {@link lineOf}: ``line`The kiln got ${large('cone 6')}.` ``. */
export const line = (
  strings: TemplateStringsArray,
  ...values: readonly (string | Part | Line)[]
): Line => lineOf(...strings.flatMap((text, index) => [text, values[index] ?? '']));
