import { Refusal } from '../model/refusal.ts';

/** A schedule is a page of text; a larger file is something else (chosen). */
export const MAX_SCHEDULE_BYTES = 1024 * 1024;

const UTF16_MARKS: readonly (readonly [first: number, second: number, label: string])[] = [
  [0xff, 0xfe, 'utf-16le'],
  [0xfe, 0xff, 'utf-16be'],
];

/**
 * The text of a schedule file: by its byte order mark, else as UTF-8, else as windows-1252.
 *
 * @throws Refusal `too-large` where the file cannot be a schedule
 */
export const scheduleText = (bytes: Uint8Array): string => {
  if (bytes.length > MAX_SCHEDULE_BYTES) {
    throw new Refusal('too-large', 'this file is too large to be a schedule');
  }
  const marked = UTF16_MARKS.find(([first, second]) => bytes[0] === first && bytes[1] === second);
  if (marked) return new TextDecoder(marked[2]).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
};
