import { clockSeconds } from '../time/time-reader.ts';

/** Nobody types more by hand; longer texts are a logger's (chosen). */
const MOST_ENTRIES = 40;
const MOST_CHARS = 4000;

/** A time and a temperature as somebody typed them, as cells for the readers of cells. */
export interface TypedEntry {
  /** 1-based line on which it stands, and the whole of that line. */
  readonly line: number;
  readonly text: string;
  /** Empty where a temperature stands alone. */
  readonly time: string;
  /** Empty where a time has only a remark beside it. */
  readonly temperature: string;
  /** From where to where on its line a temperature stands that has no unit beside it; else null. */
  readonly bare: readonly [from: number, to: number] | null;
}

const TIME =
  /(?:\d{1,3}:\d{2}(?::\d{2})?|\d{1,2}(?=\s{0,2}[ap]\.?m\b))(?:\s{0,2}[ap]\.?m\b\.?)?(?:\s{0,2}(?:uhr|h)\b)?/iy;
const SPAN =
  /(\d{1,3}(?:[.,]\d{1,3})?)\s{0,2}(?:hours?|hrs?|h|std|stunden?|heures?|horas?|ore|uur)(?:(\d{1,2})(?!\d)|\s{0,2}(\d{1,2})\s{0,2}(?:minutes?|min|m))?(?!\p{L})/iuy;
const MINUTES = /(\d{1,4})\s{0,2}(?:minutes?|min)(?!\p{L})/iuy;
const TEMPERATURE =
  /(-?(?:\d[.,’']\d{3}(?:[.,]\d{1,2})?|\d{1,4}(?:[.,]\d{1,2})?))(?!\d|:)\s{0,2}(?:°|º|degrees?|deg|grad)?\s{0,2}(celsius|fahrenheit|c|f)?(?!\p{L})/iuy;
/** Nobody types thousandths of a degree: a mark before three digits parts thousands. */
const THOUSANDS = /^(-?\d)[.,’'](?=\d{3})/;
const WORD = /[\p{L}’'.]+/uy;
const ENDS_ENTRY = '/;|';

const two = (value: number): string => String(value).padStart(2, '0');
const asClock = (seconds: number): string =>
  `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(Math.round(seconds) % 60)}`;
const decimal = (text: string): number => Number(text.replace(',', '.'));

interface Token {
  readonly kind: 'time' | 'temperature' | 'word' | 'end';
  readonly cell: string;
  readonly bare?: TypedEntry['bare'];
}

const matchAt = (pattern: RegExp, text: string, at: number): RegExpExecArray | null => {
  pattern.lastIndex = at;
  return pattern.exec(text);
};

const timeToken = (line: string, at: number): { cell: string; length: number } | null => {
  const span = matchAt(SPAN, line, at);
  if (span !== null) {
    const seconds = decimal(span[1]!) * 3600 + Number(span[2] ?? span[3] ?? 0) * 60;
    return { cell: asClock(seconds), length: span[0].length };
  }
  const minutes = matchAt(MINUTES, line, at);
  if (minutes !== null) {
    return { cell: asClock(Number(minutes[1]) * 60), length: minutes[0].length };
  }
  const clock = matchAt(TIME, line, at);
  if (clock === null || Number.isNaN(clockSeconds(clock[0]))) return null;
  // Nobody types fractions of a second.
  if (/^[.,:]\d/.test(line.slice(at + clock[0].length, at + clock[0].length + 2))) return null;
  return { cell: clock[0], length: clock[0].length };
};

/** The tokens of a line; null where something in it is neither time, temperature nor word. */
const tokensOf = (line: string): Token[] | null => {
  const tokens: Token[] = [];
  for (let at = 0; at < line.length;) {
    const time = timeToken(line, at);
    if (time !== null) {
      tokens.push({ kind: 'time', cell: time.cell });
      at += time.length;
      continue;
    }
    const reading = matchAt(TEMPERATURE, line, at);
    if (reading !== null) {
      const unit = (reading[2] ?? '').charAt(0).toUpperCase();
      const number = reading[1]!.replace(THOUSANDS, '$1').replace(',', '.');
      const end = at + reading[0].trimEnd().length;
      tokens.push(
        unit === ''
          ? { kind: 'temperature', cell: number, bare: [at, end] }
          : { kind: 'temperature', cell: `${number} °${unit}` },
      );
      at += reading[0].length;
      continue;
    }
    const word = matchAt(WORD, line, at);
    if (word !== null) tokens.push({ kind: 'word', cell: word[0] });
    else if (/\d/.test(line.charAt(at))) return null;
    else if (ENDS_ENTRY.includes(line.charAt(at))) tokens.push({ kind: 'end', cell: '' });
    at += word?.[0].length ?? 1;
  }
  return tokens;
};

interface Pair extends Pick<TypedEntry, 'time' | 'temperature' | 'bare'> {
  /** Whether a number stands in the remark behind it. */
  hasNumberedRemark?: boolean;
}

/** The pairs of a line, whichever of the two comes first; null where they do not pair up. */
const pairsOf = (tokens: readonly Token[]): Pair[] | null => {
  const pairs: Pair[] = [];
  let time: string | null = null;
  let temperature: string | null = null;
  let bare: TypedEntry['bare'] = null;
  let isRemark = false;
  let isRemarked = false;
  for (const token of tokens) {
    const { kind, cell } = token;
    if (kind === 'word' && time === null && temperature === null) isRemark = pairs.length > 0;
    if (kind === 'end' || kind === 'time') isRemark = false;
    if (kind === 'word' && time !== null) isRemarked = true;
    // `10:00 looked in /`: a time with nothing but a remark.
    if (kind === 'end' && time !== null && isRemarked) {
      pairs.push({ time, temperature: '', bare: null });
      time = null;
    }
    if (kind === 'temperature' && isRemark) pairs[pairs.length - 1]!.hasNumberedRemark = true;
    else if (kind === 'temperature') {
      if (temperature !== null) return null;
      temperature = cell;
      bare = token.bare ?? null;
    }
    if (kind === 'time') {
      if (time !== null) return null;
      time = cell;
      isRemarked = false;
    }
    if (time === null || temperature === null) continue;
    pairs.push({ time, temperature, bare });
    time = temperature = null;
  }
  if (temperature !== null) return pairs.length > 0 ? null : [{ time: '', temperature, bare }];
  return time === null ? pairs : [...pairs, { time, temperature: '', bare: null }];
};

const isComment = (line: string): boolean => /^\s*(?:#|\/\/|$)/.test(line);
const hasNoNumber = (line: string): boolean => !/\d/.test(line);
/** Names over columns: a table, however short, is a logger's or a spreadsheet's. */
const isHeader = (line: string): boolean => /\p{L}\s*[,;|\t]\s*\p{L}|\btemp|\btime\b/iu.test(line);
/** A sentence with a number in it and no time: `Fired to cone 6 on Tuesday.` */
const isProse = (tokens: readonly Token[]): boolean =>
  tokens.filter(({ kind }) => kind === 'word').length >= 2 &&
  tokens.every(({ kind }) => kind !== 'time');

interface Entry extends TypedEntry {
  readonly hasNumberedRemark?: boolean;
}

/** A line's entries: none for a remark, null for a line that nobody types by hand. */
const entriesOf = (text: string, line: number): Entry[] | null => {
  if (isComment(text)) return [];
  if (hasNoNumber(text)) return isHeader(text) ? null : [];
  const tokens = tokensOf(text);
  if (tokens === null) return null;
  if (isProse(tokens)) return [];
  return pairsOf(tokens)?.map((pair) => ({ line, text, ...pair })) ?? null;
};

const plain = ({ line, text, time, temperature, bare }: Entry): TypedEntry => ({
  ...{ line, text, time, temperature, bare },
});

const LINE_END = /\r\n|[\r\n]/;

/**
 * The times and temperatures that somebody typed or pasted by hand, in any of the usual ways, with
 * remarks between them; null where the text is anything else.
 */
export const typedEntries = (text: string): TypedEntry[] | null => {
  if (text.length > MOST_CHARS) return null;
  const entries: Entry[] = [];
  for (const [index, line] of text.split(LINE_END).entries()) {
    const found = entriesOf(line, index + 1);
    if (found === null) return null;
    entries.push(...found);
    if (entries.length > MOST_ENTRIES) return null;
  }
  // Numbers behind every single entry are the fields of a program, not remarks.
  if (entries.every(({ hasNumberedRemark }) => hasNumberedRemark === true)) return null;
  const alone = entries.filter(({ time }) => time === '').length;
  const paired = entries.filter(
    ({ time, temperature }) => time !== '' && temperature !== '',
  ).length;
  return paired >= 2 && paired > alone ? entries.map(plain) : null;
};

/**
 * Each line of a text by itself: its times and temperatures, none where it is but a remark, null
 * where no such pair can be made of the numbers on it.
 */
export const typedLines = (text: string): (TypedEntry[] | null)[] =>
  text.split(LINE_END).map((line, index) => entriesOf(line, index + 1)?.map(plain) ?? null);

/**
 * A text that was typed by hand with a unit written behind every temperature that has none; as it is
 * where it is no such text.
 */
export const withUnit = (text: string, unit: 'C' | 'F'): string => {
  const entries = typedEntries(text);
  if (entries === null) return text;
  const lines = text.split(LINE_END);
  for (const { line, bare } of entries.toReversed()) {
    const words = lines[line - 1];
    if (bare === null || words === undefined) continue;
    const number = words.slice(...bare).replace(/[^\d.,]+$/, '');
    lines[line - 1] = `${words.slice(0, bare[0])}${number} °${unit}${words.slice(bare[1])}`;
  }
  return lines.join('\n');
};
