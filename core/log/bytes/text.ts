/**
 * The bytes of a text whose ASCII characters are single bytes with their usual values, which holds
 * for UTF-8 and every single-byte page; UTF-16 is turned into UTF-8 first. So lines and numbers are
 * read from the bytes themselves, and only the rare cell that is neither needs a decoder.
 */
export interface Text {
  /** Without a byte order mark and without what a power cut left behind the last line. */
  readonly bytes: Uint8Array;
  readonly encoding: string;
  /** The characters of a stretch of {@link bytes}; damaged bytes become U+FFFD. */
  readonly decode: (from: number, to: number) => string;
}

export const LINE_FEED = 0x0a;
export const CARRIAGE_RETURN = 0x0d;

/**
 * The characters of bytes 0x80 to 0x9F in windows-1252 (WHATWG Encoding, index-windows-1252). Some
 * runtimes decode that page as ISO 8859-1 and leave control characters there.
 */
const WINDOWS_1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

const withWindows1252 = (text: string): string =>
  text.replace(/[\u0080-\u009f]/g, (control) => WINDOWS_1252.charAt(control.charCodeAt(0) - 0x80));

/** Makes a {@link Text}; `label` must be one that TextDecoder knows. */
export const makeText = (bytes: Uint8Array, encoding: string, label: string): Text => {
  const decoder = new TextDecoder(label);
  const decode = (from: number, to: number): string => decoder.decode(bytes.subarray(from, to));
  if (label !== 'windows-1252') return { bytes, encoding, decode };
  return { bytes, encoding, decode: (from, to) => withWindows1252(decode(from, to)) };
};

/** Where the line that contains `from` ends: at its line feed or carriage return, or at the end. */
export const lineEndFrom = (bytes: Uint8Array, from: number): number => {
  const { length } = bytes;
  for (let at = from; at < length; at += 1) {
    const byte = bytes[at]!;
    if (byte === 0x0a || byte === 0x0d) return at;
  }
  return length;
};

/** Where the next line starts, given where one ends; CR LF is one line end. */
export const afterLineEnd = (bytes: Uint8Array, end: number): number => {
  if (bytes[end] === CARRIAGE_RETURN && bytes[end + 1] === LINE_FEED) return end + 2;
  return Math.min(end + 1, bytes.length);
};
