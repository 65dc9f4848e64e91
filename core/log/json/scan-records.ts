import { MAX_JSON_DEPTH } from '../limits.ts';
import { Refusal } from '../../model/refusal.ts';
import { Spans } from './spans.ts';

/** The one list that a large JSON file is made of. */
export interface RecordList {
  /** Its members, each an object or an array. */
  readonly records: Spans;
  /** The text around it, with the list emptied. */
  readonly around: string;
}

/** A list must have so many members to be read one by one … (chosen) */
const LARGE_LIST = 5000;
/** … and hold nearly all there is: so many objects and arrays may stand beside it (chosen). */
const MOST_BESIDE = 100;

interface Open {
  readonly isArray: boolean;
  readonly from: number;
  /** Objects and arrays met before this one. */
  readonly metBefore: number;
  members: number;
}

interface Closed extends Open {
  readonly to: number;
  readonly met: number;
}

/** Where a string that begins at `at` ends: behind its closing quote, or at the text's end. */
const stringEnd = (text: string, at: number): number => {
  let quote = text.indexOf('"', at + 1);
  while (quote >= 0) {
    let slashes = 0;
    while (text.charCodeAt(quote - 1 - slashes) === 0x5c) slashes += 1;
    if (slashes % 2 === 0) return quote + 1;
    quote = text.indexOf('"', quote + 1);
  }
  return text.length;
};

/** Runs over the brackets of a text; what stands between them is not looked at. */
const scanBrackets = (
  text: string,
  from: number,
  to: number,
  opens: (isArray: boolean, at: number) => void,
  closes: (at: number) => void,
): void => {
  let at = from;
  while (at < to) {
    const code = text.charCodeAt(at);
    if (code === 0x22) {
      at = stringEnd(text, at);
      continue;
    }
    if (code === 0x7b || code === 0x5b) opens(code === 0x5b, at);
    else if (code === 0x7d || code === 0x5d) closes(at);
    at += 1;
  }
};

/** The array with the most objects or arrays right in it. */
const largestArray = (text: string): { largest: Closed | null; met: number } => {
  const stack: Open[] = [];
  let largest: Closed | null = null;
  let met = 0;
  const close = (at: number): void => {
    const open = stack.pop();
    if (open?.isArray === true && open.members > (largest?.members ?? 0)) {
      largest = { ...open, to: at, met: met - open.metBefore };
    }
  };
  scanBrackets(
    text,
    0,
    text.length,
    (isArray, at) => {
      const parent = stack[stack.length - 1];
      if (parent !== undefined) parent.members += 1;
      met += 1;
      stack.push({ isArray, from: at, metBefore: met, members: 0 });
      if (stack.length <= MAX_JSON_DEPTH) return;
      throw new Refusal(
        'not-readable',
        `this JSON is nested more than ${MAX_JSON_DEPTH} levels deep`,
      );
    },
    close,
  );
  while (stack.length > 0) close(text.length);
  return { largest, met };
};

const membersOf = (text: string, array: Closed): Spans => {
  const records = new Spans();
  let depth = 0;
  let from = 0;
  scanBrackets(
    text,
    array.from + 1,
    array.to,
    (_, at) => {
      if (depth === 0) from = at;
      depth += 1;
    },
    (at) => {
      depth -= 1;
      if (depth === 0) records.add(from, at + 1);
    },
  );
  if (depth > 0) records.add(from, array.to);
  return records;
};

/**
 * Finds the list of records in a JSON text that is one long list of them, be it inside other things,
 * so that it can be read record by record. Null for smaller or differently shaped texts, which are
 * read whole.
 *
 * @throws Refusal `not-readable` if it is nested too deeply
 */
export const scanRecords = (text: string): RecordList | null => {
  const { largest, met } = largestArray(text);
  if (largest === null || largest.members < LARGE_LIST) return null;
  if (met - largest.met - 1 > MOST_BESIDE) return null;
  return {
    records: membersOf(text, largest),
    around: `${text.slice(0, largest.from + 1)}${text.slice(largest.to)}`,
  };
};
