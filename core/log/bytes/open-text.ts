import type { Account } from '../account.ts';
import { Refusal } from '../../model/refusal.ts';
import { foreignFormat } from './signatures.ts';
import { makeText, type Text } from './text.ts';
import { utf16ToUtf8, type ByteOrder } from './utf16.ts';
import { takeUtf8Census } from './utf8.ts';

/** Names the encoding of bytes, as a label of TextDecoder, or null if it cannot tell. */
export type GuessEncoding = (bytes: Uint8Array) => string | null;

const PROBED_BYTES = 64 * 1024;
const SUBSTITUTE = 0x1a;

/** Of the probed bytes, at most this share may be control characters (chosen). */
const MOST_CONTROL_CHARACTERS = 0.02;
/** NULs in more places than this, with less than four lines to each, are no power cut (chosen). */
const FEW_NUL_RUNS = 8;
const LINES_PER_NUL_RUN = 4;
/** Well-formed sequences for each broken byte in damaged UTF-8, at least (chosen). */
const SOUND_PER_BROKEN = 3;

const BINARY = 'this is not a text file; export the log as CSV or text and give that file';

const startsWith = (bytes: Uint8Array, ...magic: number[]): boolean =>
  magic.every((byte, index) => bytes[index] === byte);

/** UTF-16 text in western letters has a zero in one of each two bytes. */
const byteOrderByZeros = (bytes: Uint8Array): ByteOrder | null => {
  const pairs = Math.min(bytes.length, PROBED_BYTES) >> 1;
  if (pairs < 2) return null;
  let firstZeros = 0;
  let secondZeros = 0;
  for (let pair = 0; pair < pairs; pair += 1) {
    if (bytes[2 * pair] === 0) firstZeros += 1;
    if (bytes[2 * pair + 1] === 0) secondZeros += 1;
  }
  if (secondZeros > 0.7 * pairs && firstZeros < 0.1 * pairs) return 'little';
  if (firstZeros > 0.7 * pairs && secondZeros < 0.1 * pairs) return 'big';
  return null;
};

/** Cuts off the NULs and the end-of-file sign that may follow the last line. */
const withoutTail = (bytes: Uint8Array, account: Account): Uint8Array => {
  let end = bytes.length;
  while (end > 0 && (bytes[end - 1] === 0 || bytes[end - 1] === SUBSTITUTE)) end -= 1;
  if (bytes.subarray(end).includes(0)) account.warn('nul-bytes');
  return bytes.subarray(0, end);
};

const openUtf16 = (bytes: Uint8Array, order: ByteOrder, from: number, account: Account): Text => {
  const encoding = order === 'little' ? 'utf-16le' : 'utf-16be';
  account.decide('encoding', encoding, from === 0 ? 'zero-bytes' : 'byte-order-mark', 0.99);
  return makeText(withoutTail(utf16ToUtf8(bytes, order, from), account), encoding, 'utf-8');
};

const refuseBinary = (bytes: Uint8Array): void => {
  const probed = bytes.subarray(0, PROBED_BYTES);
  let controls = 0;
  let nulRuns = 0;
  let lines = 1;
  probed.forEach((byte, index) => {
    if (byte === 0 && probed[index - 1] !== 0) nulRuns += 1;
    if (byte === 0x0a || byte === 0x0d) lines += 1;
    const isBlank = (byte >= 0x09 && byte <= 0x0d) || byte === SUBSTITUTE || byte === 0x1b;
    if ((byte > 0 && byte < 0x20 && !isBlank) || byte === 0x7f) controls += 1;
  });
  const riddled = nulRuns > FEW_NUL_RUNS && nulRuns * LINES_PER_NUL_RUN > lines;
  if (riddled || controls > MOST_CONTROL_CHARACTERS * probed.length) {
    throw new Refusal('binary', BINARY);
  }
};

/** The guess, if TextDecoder knows it and it leaves ASCII as it is. */
const usableGuess = (bytes: Uint8Array, guess: GuessEncoding | undefined): string | null => {
  const label = guess?.(bytes.subarray(0, PROBED_BYTES))?.toLowerCase() ?? null;
  if (label === null || label.startsWith('utf-16') || label.startsWith('utf-32')) return null;
  try {
    const sample = new TextDecoder(label).decode(Uint8Array.of(0x31, 0x2c, 0x0a));
    return sample === '1,\n' ? label : null;
  } catch {
    return null;
  }
};

const openSingleBytes = (bytes: Uint8Array, guess: GuessEncoding | undefined, account: Account) => {
  const guessed = usableGuess(bytes, guess);
  const isUseful = guessed !== null && guessed !== 'utf-8' && guessed !== 'ascii';
  const label = isUseful ? guessed : 'windows-1252';
  account.decide('encoding', label, isUseful ? 'guessed' : 'not-utf8', isUseful ? 0.8 : 0.7);
  return makeText(bytes, label, label);
};

const openUtf8 = (
  bytes: Uint8Array,
  hasMark: boolean,
  guess: GuessEncoding | undefined,
  account: Account,
): Text => {
  const census = takeUtf8Census(bytes);
  if (census.broken === 0) {
    account.decide('encoding', 'utf-8', hasMark ? 'byte-order-mark' : 'valid-utf8', 0.99);
    return makeText(bytes, 'utf-8', 'utf-8');
  }
  const isMostlyUtf8 = census.sequences >= SOUND_PER_BROKEN * census.broken;
  if (!hasMark && !isMostlyUtf8) return openSingleBytes(bytes, guess, account);
  account.decide('encoding', 'utf-8', hasMark ? 'byte-order-mark' : 'mostly-utf8', 0.9);
  account.warn('damaged-characters');
  return makeText(bytes, 'utf-8', 'utf-8');
};

/** An encoding that the person names, as TextDecoder knows it. */
const canonical = (label: string): string => {
  try {
    return new TextDecoder(label).encoding;
  } catch {
    throw new Refusal(
      'bad-option',
      `“${label}” names no encoding; give one such as utf-8, utf-16le or windows-1252`,
    );
  }
};

const hasDigits = (bytes: Uint8Array): boolean =>
  bytes.subarray(0, PROBED_BYTES).some((byte) => byte >= 0x30 && byte <= 0x39);

const refuseEncoding = (label: string, why: string): never => {
  throw new Refusal('bad-option', `the file cannot be read as ${label}: ${why}`);
};

const openGivenUtf16 = (bytes: Uint8Array, encoding: string, account: Account): Text => {
  const isLittle = encoding === 'utf-16le';
  const hasMark = isLittle ? startsWith(bytes, 0xff, 0xfe) : startsWith(bytes, 0xfe, 0xff);
  const text = utf16ToUtf8(bytes, isLittle ? 'little' : 'big', hasMark ? 2 : 0);
  if (!hasDigits(text)) refuseEncoding(encoding, 'no digit is left of it');
  return makeText(withoutTail(text, account), encoding, 'utf-8');
};

/** The text in the encoding that the person gives. */
const openGiven = (bytes: Uint8Array, label: string, account: Account): Text => {
  const encoding = canonical(label);
  account.decide('encoding', encoding, 'given', 1);
  if (encoding.startsWith('utf-16')) return openGivenUtf16(bytes, encoding, account);
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff) || byteOrderByZeros(bytes)) {
    refuseEncoding(encoding, 'it holds two bytes for each character, as UTF-16 does');
  }
  if (usableGuess(bytes, () => encoding) === null) {
    refuseEncoding(encoding, 'digits and commas are not single bytes there');
  }
  const hasMark = startsWith(bytes, 0xef, 0xbb, 0xbf);
  const body = withoutTail(bytes.subarray(hasMark ? 3 : 0), account);
  refuseBinary(body);
  if (encoding === 'utf-8' && takeUtf8Census(body).broken > 0) account.warn('damaged-characters');
  return makeText(body, encoding, encoding);
};

/**
 * The file as text: its encoding decided, its marks and its torn end taken off.
 * `given` is the encoding that the person names.
 *
 * @throws Refusal `binary` if it is no text, `bad-option` for an encoding that does not suit it.
 */
export const openText = (
  bytes: Uint8Array,
  guess: GuessEncoding | undefined,
  account: Account,
  given?: string,
): Text => {
  const foreign = foreignFormat(bytes);
  if (foreign !== null) {
    throw new Refusal('binary', `this is ${foreign.kind}, not a log; ${foreign.remedy}`);
  }
  if (given !== undefined) return openGiven(bytes, given, account);
  if (startsWith(bytes, 0xff, 0xfe)) return openUtf16(bytes, 'little', 2, account);
  if (startsWith(bytes, 0xfe, 0xff)) return openUtf16(bytes, 'big', 2, account);
  const order = byteOrderByZeros(bytes);
  if (order !== null) return openUtf16(bytes, order, 0, account);
  const hasMark = startsWith(bytes, 0xef, 0xbb, 0xbf);
  const body = withoutTail(bytes.subarray(hasMark ? 3 : 0), account);
  refuseBinary(body);
  return openUtf8(body, hasMark, guess, account);
};
