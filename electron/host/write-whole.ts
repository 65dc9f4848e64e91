import { randomUUID } from 'node:crypto';
import { chmod, chown, lstat, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import type { Stats } from 'node:fs';
import { dirname, join } from 'node:path';
import { makeFolder } from './make-folder.ts';
import { NotWritten } from './not-written.ts';
import { systemCode } from './system-code.ts';

/** Bits of a file's mode, as POSIX has them; Windows tells "read-only" by the same. */
const ANYONE_MAY_WRITE = 0o222;
const PERMISSIONS = 0o777;

const nullIfMissing = (cause: unknown): null => {
  if (systemCode(cause) === 'ENOENT') return null;
  throw cause;
};

/** Where a path leads in the end, through every link, or the path itself where nothing stands. */
const endOf = async (path: string): Promise<string> => {
  const end = await realpath(path).catch(nullIfMissing);
  if (end !== null) return end;
  // Nothing at the end, and yet something here: a link that leads nowhere.
  if ((await lstat(path).catch(nullIfMissing)) !== null) throw new NotWritten('EEXIST');
  return path;
};

/** Only a file that may be written is replaced: no folder, no device, no pipe. */
const mayReplace = (standing: Stats): void => {
  if (standing.isDirectory()) throw new NotWritten('EISDIR');
  if (!standing.isFile()) throw new NotWritten('EACCES', 'what stands there is no file');
  if ((standing.mode & ANYONE_MAY_WRITE) === 0) {
    throw new NotWritten('EACCES', 'the file that stands there is write-protected');
  }
};

/** Gives the new file what the one before it had. To keep its owner is the administrator's to do. */
const dressAs = async (path: string, { mode, uid, gid }: Stats): Promise<void> => {
  if (process.platform === 'win32') return;
  await chown(path, uid, gid).catch(() => undefined);
  await chmod(path, mode & PERMISSIONS);
};

/** Windows gives a file that another program has open to nobody, and calls that many things. */
const heldByAnother = (cause: unknown, standing: Stats | null): unknown => {
  const isHeld = standing !== null && ['EPERM', 'EACCES'].includes(systemCode(cause) ?? '');
  return isHeld && process.platform === 'win32' ? new NotWritten('EBUSY') : cause;
};

/**
 * Writes a file whole or not at all: what stood there before stays until the new one is complete,
 * and leaves it its permissions. A link is written through to the file that it leads to. Folders on
 * the way are made.
 *
 * @throws NotWritten where what stands there is no file or is write-protected; else what the system
 * says. `whyNotWritten` has the words for both
 */
export const writeWhole = async (path: string, text: string): Promise<void> => {
  makeFolder(dirname(path));
  const end = await endOf(path);
  const standing = await stat(end).catch(nullIfMissing);
  if (standing) mayReplace(standing);
  const partial = join(dirname(end), `.${randomUUID()}.part`);
  try {
    await writeFile(partial, text);
    if (standing) await dressAs(partial, standing);
    await rename(partial, end).catch((cause: unknown) => {
      throw heldByAnother(cause, standing);
    });
  } catch (cause) {
    await rm(partial, { force: true });
    throw cause;
  }
};
