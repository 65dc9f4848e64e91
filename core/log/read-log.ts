import type { Log } from '../model/log.ts';
import type { CoupleType, ReadingDecisions } from '../model/options.ts';
import { Refusal } from '../model/refusal.ts';
import { Account } from './account.ts';
import { assembleLog } from './assemble/assemble-log.ts';
import type { TableRead } from './assemble/table-read.ts';
import { openText, type GuessEncoding } from './bytes/open-text.ts';
import type { Text } from './bytes/text.ts';
import { readDelimited, type DelimitedRead } from './delimited/read-delimited.ts';
import { readJson } from './json/read-json.ts';
import { MAX_FILE_BYTES } from './limits.ts';
import { readTyped } from './typed/read-typed.ts';

/** What the reader may be given from outside. */
export interface ReadingEnvironment {
  /** Names the encoding of bytes that are neither UTF-8 nor UTF-16, as TextDecoder calls it. */
  readonly guessEncoding?: GuessEncoding;
  /** The kiln's couple as the person knows it: used for voltages of which the file names none. */
  readonly knownCouple?: CoupleType | undefined;
  /** Keeps to the careful path for every row. The result is the same; tests compare. */
  readonly isCareful?: boolean;
}

const isBlank = ({ bytes }: Text): boolean => bytes.every((byte) => byte <= 0x20);

/**
 * The characters of a file that may be a log.
 *
 * @throws Refusal if it is empty, too large or no text
 */
export const openLogText = (
  bytes: Uint8Array,
  decisions: ReadingDecisions,
  environment: ReadingEnvironment,
  account: Account,
): Text => {
  if (bytes.length === 0) throw new Refusal('empty', 'the file is empty');
  if (bytes.length > MAX_FILE_BYTES) {
    const most = MAX_FILE_BYTES / 1024 / 1024;
    throw new Refusal('too-large', `the file is larger than ${most} MB; cut out the firing in it`);
  }
  const text = openText(bytes, environment.guessEncoding, account, decisions.encoding);
  if (isBlank(text)) throw new Refusal('empty', 'there is nothing but blanks in the file');
  return text;
};

/**
 * The table in a text, whatever its shape.
 *
 * @throws Refusal naming what is missing
 */
export const readTable = (
  text: Text,
  file: { readonly name: string; readonly byteLength: number },
  decisions: ReadingDecisions,
  environment: ReadingEnvironment,
  account: Account,
): TableRead | DelimitedRead => {
  const { name, byteLength } = file;
  const { isCareful = false, knownCouple } = environment;
  const table =
    readJson(text, name, byteLength, decisions, account) ??
    readTyped(text, name, byteLength, decisions, account) ??
    readDelimited(text, name, byteLength, decisions, account, isCareful);
  return { ...table, knownCouple };
};

/**
 * Reads a log of any usual shape from the bytes of a file, with a full account of how.
 *
 * `fileName` is only carried along: nothing is decided by a name or its ending. `decisions` of the
 * person override the reader's own.
 *
 * @throws Refusal with a plain sentence if the bytes are no log, or a decision does not suit them
 */
export const readLog = (
  bytes: Uint8Array,
  fileName: string,
  decisions: ReadingDecisions = {},
  environment: ReadingEnvironment = {},
): Log => {
  const account = new Account();
  const text = openLogText(bytes, decisions, environment, account);
  const file = { name: fileName, byteLength: bytes.length };
  const table = readTable(text, file, decisions, environment, account);
  return assembleLog(table);
};
