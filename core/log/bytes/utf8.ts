/** How the bytes above ASCII fare as UTF-8. */
export interface Utf8Census {
  /** Well-formed sequences of two to four bytes. */
  readonly sequences: number;
  /** Bytes that belong to no well-formed sequence. */
  readonly broken: number;
}

/** The length of the sequence that `lead` opens, or 0 if it opens none (RFC 3629, section 4). */
const sequenceLength = (lead: number): number => {
  if (lead >= 0xc2 && lead <= 0xdf) return 2;
  if (lead >= 0xe0 && lead <= 0xef) return 3;
  if (lead >= 0xf0 && lead <= 0xf4) return 4;
  return 0;
};

const isContinuation = (byte: number | undefined): boolean =>
  byte !== undefined && (byte & 0xc0) === 0x80;

/** Whether the second byte makes the sequence overlong, a surrogate or beyond U+10FFFF. */
const isForbiddenPair = (lead: number, second: number): boolean =>
  (lead === 0xe0 && second < 0xa0) ||
  (lead === 0xed && second > 0x9f) ||
  (lead === 0xf0 && second < 0x90) ||
  (lead === 0xf4 && second > 0x8f);

const wellFormedLength = (bytes: Uint8Array, at: number): number => {
  const lead = bytes[at]!;
  const length = sequenceLength(lead);
  if (length === 0) return 0;
  for (let offset = 1; offset < length; offset += 1) {
    if (!isContinuation(bytes[at + offset])) return 0;
  }
  return isForbiddenPair(lead, bytes[at + 1]!) ? 0 : length;
};

/** Counts the sequences above ASCII, in one pass. */
export const takeUtf8Census = (bytes: Uint8Array): Utf8Census => {
  let sequences = 0;
  let broken = 0;
  let at = 0;
  while (at < bytes.length) {
    if (bytes[at]! < 0x80) {
      at += 1;
      continue;
    }
    const length = wellFormedLength(bytes, at);
    if (length === 0) broken += 1;
    else sequences += 1;
    at += Math.max(1, length);
  }
  return { sequences, broken };
};
