/** Which of the two bytes of a UTF-16 unit comes first. */
export type ByteOrder = 'little' | 'big';

const REPLACEMENT = 0xfffd;
const isHighSurrogate = (unit: number): boolean => unit >= 0xd800 && unit <= 0xdbff;
const isLowSurrogate = (unit: number): boolean => unit >= 0xdc00 && unit <= 0xdfff;

/** Writes one code point as UTF-8 (RFC 3629, section 3) and returns where the next one goes. */
const writeUtf8 = (into: Uint8Array, at: number, point: number): number => {
  if (point < 0x80) {
    into[at] = point;
    return at + 1;
  }
  if (point < 0x800) {
    into[at] = 0xc0 | (point >> 6);
    into[at + 1] = 0x80 | (point & 0x3f);
    return at + 2;
  }
  if (point < 0x10000) {
    into[at] = 0xe0 | (point >> 12);
    into[at + 1] = 0x80 | ((point >> 6) & 0x3f);
    into[at + 2] = 0x80 | (point & 0x3f);
    return at + 3;
  }
  into[at] = 0xf0 | (point >> 18);
  into[at + 1] = 0x80 | ((point >> 12) & 0x3f);
  into[at + 2] = 0x80 | ((point >> 6) & 0x3f);
  into[at + 3] = 0x80 | (point & 0x3f);
  return at + 4;
};

/**
 * UTF-16 as UTF-8, from `from` on. A surrogate without its partner becomes U+FFFD; a single byte at
 * the end (half a unit) is dropped.
 */
export const utf16ToUtf8 = (bytes: Uint8Array, order: ByteOrder, from: number): Uint8Array => {
  const high = order === 'big' ? 0 : 1;
  const low = 1 - high;
  const units = (bytes.length - from) >> 1;
  const unitAt = (index: number): number =>
    (bytes[from + 2 * index + high]! << 8) | bytes[from + 2 * index + low]!;
  // A unit takes at most three bytes; a pair of surrogates takes four for its two units.
  const into = new Uint8Array(units * 3);
  let at = 0;
  for (let index = 0; index < units; index += 1) {
    let point = unitAt(index);
    if (isHighSurrogate(point) && index + 1 < units && isLowSurrogate(unitAt(index + 1))) {
      point = 0x10000 + ((point - 0xd800) << 10) + (unitAt(index + 1) - 0xdc00);
      index += 1;
    } else if (isHighSurrogate(point) || isLowSurrogate(point)) {
      point = REPLACEMENT;
    }
    at = writeUtf8(into, at, point);
  }
  return into.subarray(0, at);
};
