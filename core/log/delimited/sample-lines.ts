import {
  HEAD_BYTES,
  HEAD_LINES,
  MAX_LINE_BYTES,
  SAMPLE_BLOCKS,
  SAMPLE_BLOCK_LINES,
} from '../limits.ts';
import { afterLineEnd, lineEndFrom, LINE_FEED, CARRIAGE_RETURN, type Text } from '../bytes/text.ts';

/** A line of the file, or the few lines that one quoted name runs over. */
export interface SampledLine {
  readonly text: string;
  /** 1-based, for lines of the head; 0 where it is not known. */
  readonly line: number;
  /** Where its bytes begin, and where the next line's do. */
  readonly from: number;
  readonly next: number;
}

export interface LineSample {
  /** The first lines of the file, without a gap. */
  readonly head: readonly SampledLine[];
  /** Lines from the rest of the file, in order; empty if the head is the whole file. */
  readonly body: readonly SampledLine[];
}

/** The characters of a line; what a power cut left in it as NULs is taken out. */
export const lineText = (text: Text, from: number, end: number): string => {
  const to = Math.min(end, from + MAX_LINE_BYTES);
  const decoded = text.decode(from, to);
  return decoded.includes('\0') ? decoded.replaceAll('\0', '') : decoded;
};

const readLine = (text: Text, from: number): SampledLine => {
  const end = lineEndFrom(text.bytes, from);
  return { text: lineText(text, from, end), line: 0, from, next: afterLineEnd(text.bytes, end) };
};

/** Lines over which a quoted name in the head may run, and how long they may get (chosen). */
const MOST_NAME_LINES = 6;
const MOST_NAME_CHARS = 4000;

const hasOddQuotes = (text: string): boolean => text.split('"').length % 2 === 0;

/** A cell that begins with a quote, which may be closed on a later line. */
const opensQuote = (text: string): boolean =>
  text.length < MOST_NAME_CHARS && /(?:^|[,;\t|])\s*"/.test(text) && hasOddQuotes(text);

/** The head's lines with their numbers; names that run over several lines are one. */
const joinQuoted = (lines: readonly SampledLine[]): SampledLine[] => {
  const whole: SampledLine[] = [];
  for (let index = 0; index < lines.length; index += 1) {
    const first = lines[index]!;
    const line = index + 1;
    let joined = { ...first, line };
    if (opensQuote(first.text)) {
      let { text } = first;
      for (let more = 1; more < MOST_NAME_LINES && index + more < lines.length; more += 1) {
        const next = lines[index + more]!;
        text += `\n${next.text}`;
        if (hasOddQuotes(text)) continue;
        joined = { ...joined, text, next: next.next };
        index += more;
        break;
      }
    }
    whole.push(joined);
  }
  return whole;
};

const readLines = (text: Text, from: number, most: number, before: number): SampledLine[] => {
  const lines: SampledLine[] = [];
  let at = from;
  while (at < text.bytes.length && at < before && lines.length < most) {
    const line = readLine(text, at);
    lines.push(line);
    at = line.next;
  }
  return lines;
};

/** The start of the first line that begins at or after `from`. */
const nextLineStart = (bytes: Uint8Array, from: number): number => {
  const before = bytes[from - 1];
  if (before === LINE_FEED || (before === CARRIAGE_RETURN && bytes[from] !== LINE_FEED)) {
    return from;
  }
  return afterLineEnd(bytes, lineEndFrom(bytes, from));
};

/** The start of the last `count` lines. */
const tailStart = (bytes: Uint8Array, count: number, notBefore: number): number => {
  let at = bytes.length;
  for (let line = 0; line < count && at > notBefore; line += 1) {
    at -= 1;
    while (at > notBefore && bytes[at - 1] !== LINE_FEED && bytes[at - 1] !== CARRIAGE_RETURN) {
      at -= 1;
    }
  }
  return at;
};

/** The head of the file, and blocks of lines spread over the rest with the last at its end. */
export const sampleLines = (text: Text): LineSample => {
  const { bytes } = text;
  const head = joinQuoted(readLines(text, 0, HEAD_LINES, HEAD_BYTES));
  const rest = head[head.length - 1]?.next ?? 0;
  if (rest >= bytes.length) return { head, body: [] };
  const body: SampledLine[] = [];
  const blocks = SAMPLE_BLOCKS - 1;
  let at = rest;
  for (let block = 0; block < blocks; block += 1) {
    const wanted = rest + Math.floor(((bytes.length - rest) * block) / blocks);
    const from = nextLineStart(bytes, Math.max(wanted, at));
    body.push(...readLines(text, from, SAMPLE_BLOCK_LINES, bytes.length));
    at = Math.max(at, body[body.length - 1]?.next ?? at);
  }
  const tail = Math.max(tailStart(bytes, SAMPLE_BLOCK_LINES, rest), at);
  body.push(...readLines(text, tail, SAMPLE_BLOCK_LINES, bytes.length));
  return { head, body };
};
