import { MAX_JSON_DEPTH } from '../limits.ts';
import { Refusal } from '../../model/refusal.ts';

/** A value of a JSON text, with the characters that it covers. */
export type JsonNode = JsonObject | JsonArray | JsonScalar;

export interface JsonObject {
  readonly kind: 'object';
  /** In the order of the text; names are data, so they are never keys of an object here. */
  readonly entries: readonly (readonly [string, JsonNode])[];
  readonly from: number;
  readonly to: number;
  /** Whether the text ends or breaks before its closing bracket. */
  readonly isCut: boolean;
}

export interface JsonArray {
  readonly kind: 'array';
  readonly items: readonly JsonNode[];
  readonly from: number;
  readonly to: number;
  readonly isCut: boolean;
}

export interface JsonScalar {
  readonly kind: 'scalar';
  /** A string's characters; a number, true, false, null or NaN as printed. */
  readonly text: string;
  readonly isString: boolean;
  readonly from: number;
  readonly to: number;
}

export interface ParsedJson {
  readonly node: JsonNode | null;
  /** Where reading stopped. */
  readonly end: number;
  /** What is wrong at {@link end}: nothing, the text ends too soon, or it is no JSON. */
  readonly fault: 'none' | 'cut' | 'broken';
}

const ESCAPES: Readonly<Record<string, string>> = {
  ...{ b: '\b', f: '\f', n: '\n', r: '\r', t: '\t' },
};

/** What may stand without quotes: numbers, and the words of several languages for values. */
const BARE = /^(?:[-+]?\.?\d|[-+]?inf|nan|true|false|null|none|undefined)/i;
const LONGEST_BARE = 12;

/** Thrown inside only, to leave the recursion where the text stops being JSON. */
class Stop extends Error {
  readonly fault: 'cut' | 'broken';

  constructor(fault: 'cut' | 'broken') {
    super(fault);
    this.fault = fault;
  }
}

const isBlank = (code: number): boolean =>
  code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09 || code === 0xfeff || code === 0;

/** Characters of numbers and of the bare words that languages write into JSON (`NaN`, `None`). */
const isBare = (code: number): boolean =>
  (code >= 48 && code <= 57) ||
  (code >= 65 && code <= 90) ||
  (code >= 97 && code <= 122) ||
  code === 43 ||
  code === 45 ||
  code === 46;

/** Reads values one after the other. What was complete before a fault is kept. */
class JsonReader {
  at: number;
  readonly #text: string;
  #depth = 0;

  constructor(text: string, from: number) {
    this.#text = text;
    this.at = from;
  }

  skipBlanks(): void {
    while (this.at < this.#text.length && isBlank(this.#text.charCodeAt(this.at))) this.at += 1;
  }

  /** Reads a value into `into`, so that the part before a fault is not lost. */
  value(into: (node: JsonNode) => void): void {
    this.skipBlanks();
    const character = this.#next();
    if (character === '{') this.#object(into);
    else if (character === '[') this.#array(into);
    else into(character === '"' ? this.#string() : this.#bare());
  }

  #next(): string {
    if (this.at >= this.#text.length) throw new Stop('cut');
    return this.#text.charAt(this.at);
  }

  #enter(): void {
    this.#depth += 1;
    if (this.#depth <= MAX_JSON_DEPTH) return;
    throw new Refusal(
      'not-readable',
      `this JSON is nested more than ${MAX_JSON_DEPTH} levels deep`,
    );
  }

  #object(into: (node: JsonNode) => void): void {
    this.#enter();
    const entries: (readonly [string, JsonNode])[] = [];
    const from = this.at;
    const finish = (isCut: boolean): void =>
      into({ kind: 'object', entries, from, to: this.at, isCut });
    this.at += 1;
    this.#kept(finish, () => {
      while (this.#continues('}')) {
        if (this.#next() !== '"') throw new Stop('broken');
        const key = this.#string().text;
        this.skipBlanks();
        if (this.#next() !== ':') throw new Stop('broken');
        this.at += 1;
        this.value((node) => entries.push([key, node]));
      }
    });
  }

  #array(into: (node: JsonNode) => void): void {
    this.#enter();
    const items: JsonNode[] = [];
    const from = this.at;
    const finish = (isCut: boolean): void =>
      into({ kind: 'array', items, from, to: this.at, isCut });
    this.at += 1;
    this.#kept(finish, () => {
      while (this.#continues(']')) this.value((node) => items.push(node));
    });
  }

  /** Runs through the members; hands on what there is even where a fault ends it. */
  #kept(finish: (isCut: boolean) => void, members: () => void): void {
    try {
      members();
    } catch (fault) {
      if (fault instanceof Stop) finish(true);
      throw fault;
    }
    this.#depth -= 1;
    finish(false);
  }

  /** Moves to the next member; false at the closing bracket, which it takes. */
  #continues(close: string): boolean {
    this.skipBlanks();
    if (this.#next() === ',') {
      this.at += 1;
      this.skipBlanks();
    }
    if (this.#next() !== close) return true;
    this.at += 1;
    return false;
  }

  #string(): JsonScalar {
    const from = this.at;
    let text = '';
    let at = from + 1;
    // Looked for once, not again behind every escape before it.
    let quote = this.#text.indexOf('"', at);
    for (;;) {
      if (quote < at) quote = this.#text.indexOf('"', at);
      if (quote < 0) throw new Stop('cut');
      // Looked for up to the quote only: a file without any backslash must not be searched to its
      // end for every string in it.
      const chunk = this.#text.slice(at, quote);
      const slash = chunk.indexOf('\\');
      if (slash < 0) {
        this.at = quote + 1;
        text += chunk;
        return { kind: 'scalar', text, isString: true, from, to: this.at };
      }
      text += chunk.slice(0, slash);
      at += slash;
      const letter = this.#text.charAt(at + 1);
      const hex = this.#text.slice(at + 2, at + 6);
      const isHex = letter === 'u' && /^[0-9a-fA-F]{4}$/.test(hex);
      text += isHex ? String.fromCharCode(Number.parseInt(hex, 16)) : (ESCAPES[letter] ?? letter);
      at += isHex ? 6 : 2;
    }
  }

  #bare(): JsonScalar {
    const from = this.at;
    let at = from;
    while (at < this.#text.length && isBare(this.#text.charCodeAt(at))) at += 1;
    if (!BARE.test(this.#text.slice(from, Math.min(at, from + LONGEST_BARE)))) {
      throw new Stop('broken');
    }
    // A number at the very end may have lost its last digits.
    if (at === this.#text.length) throw new Stop('cut');
    this.at = at;
    return { kind: 'scalar', text: this.#text.slice(from, at), isString: false, from, to: at };
  }
}

/**
 * Reads one JSON value from `from` on. Beyond the standard (RFC 8259) it takes bare words such as
 * `NaN`, and commas after the last member; a text that ends or breaks in the middle gives what was
 * complete before.
 *
 * @throws Refusal `not-readable` if it is nested too deeply
 */
export const parseJson = (text: string, from = 0): ParsedJson => {
  const reader = new JsonReader(text, from);
  let node: JsonNode | null = null;
  try {
    reader.value((read) => {
      node = read;
    });
    return { node, end: reader.at, fault: 'none' };
  } catch (fault) {
    if (!(fault instanceof Stop)) throw fault;
    return { node, end: reader.at, fault: fault.fault };
  }
};
