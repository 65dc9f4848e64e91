/** No more of a file than this is looked through for one line (chosen). */
const MOST_BYTES = 4 * 1024 * 1024;
/** A line is shown up to here (chosen). */
const MOST_LETTERS = 300;

const encodingOf = (bytes: Uint8Array): string => {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
};

/** One line of a file, to be shown beside what is wrong with it; null where it lies too far in. */
export const lineOfFile = async (blob: Blob, line: number): Promise<string | null> => {
  const bytes = new Uint8Array(await blob.slice(0, MOST_BYTES).arrayBuffer());
  const text = new TextDecoder(encodingOf(bytes)).decode(bytes);
  const found = text.split(/\r\n|\n|\r/)[line - 1];
  return found === undefined ? null : found.slice(0, MOST_LETTERS);
};
