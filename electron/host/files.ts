import { open, stat, type FileHandle } from 'node:fs/promises';
import { MAX_FILE_BYTES } from '../../core/log/limits.ts';
import { Refusal } from '../../core/model/refusal.ts';
import { MAX_SCHEDULE_BYTES, scheduleText } from '../../core/schedule/schedule-text.ts';
import { systemCode } from './system-code.ts';

const CHUNK_BYTES = 1024 * 1024;

/** Why the system would not give a file, in words a person can act on. */
const REASONS: Readonly<Record<string, readonly [code: Refusal['code'], why: string]>> = {
  ENOENT: ['file-missing', 'there is no such file'],
  ENOTDIR: ['file-missing', 'there is no such file'],
  ENAMETOOLONG: ['file-missing', 'there is no such file'],
  EISDIR: ['file-unreadable', 'this is a folder, not a file'],
  EACCES: ['file-unreadable', 'you may not read this file'],
  EPERM: ['file-unreadable', 'you may not read this file'],
  EMFILE: ['file-unreadable', 'too many files are open; try fewer at a time'],
  EIO: ['file-unreadable', 'the disk could not give it back'],
};

const refusalFor = (cause: unknown): unknown => {
  if (cause instanceof Refusal) return cause;
  const code = systemCode(cause);
  if (code === null) return cause;
  const [word, why] = REASONS[code] ?? [
    'file-unreadable',
    `the system could not read it (${code})`,
  ];
  return new Refusal(word, why);
};

const tooLarge = (most: number): Refusal =>
  new Refusal('too-large', `the file is larger than ${most / 1024 / 1024} MB`);

/** Reads a stream without a known length (a pipe), as far as the limit goes. */
const readPiped = async (file: FileHandle, most: number): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { bytesRead, buffer } = await file.read(Buffer.allocUnsafe(CHUNK_BYTES), 0, CHUNK_BYTES);
    if (bytesRead === 0) return Buffer.concat(chunks, length);
    length += bytesRead;
    if (length > most) throw tooLarge(most);
    chunks.push(buffer.subarray(0, bytesRead));
  }
};

const readWithin = async (path: string, most: number): Promise<Uint8Array> => {
  try {
    const about = await stat(path);
    if (about.isDirectory()) throw new Refusal('file-unreadable', 'this is a folder, not a file');
    if (about.size > most) throw tooLarge(most);
    const file = await open(path);
    try {
      return about.isFile() ? await file.readFile() : await readPiped(file, most);
    } finally {
      await file.close();
    }
  } catch (cause) {
    throw refusalFor(cause);
  }
};

/**
 * The bytes of a log.
 *
 * @throws Refusal `file-missing`, `file-unreadable` or `too-large`, before more than the limit is read
 */
export const readLogFile = (path: string): Promise<Uint8Array> => readWithin(path, MAX_FILE_BYTES);

/**
 * The text of a schedule.
 *
 * @throws Refusal as {@link readLogFile}
 */
export const readScheduleFile = async (path: string): Promise<string> =>
  scheduleText(await readWithin(path, MAX_SCHEDULE_BYTES));
