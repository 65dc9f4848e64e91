import { mkdir, stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { systemCode } from '../electron/host/files.ts';

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you may not write there',
  EPERM: 'you may not write there',
  EROFS: 'what is there can only be read',
  ENOSPC: 'there is no space left on the disk',
  EDQUOT: 'there is no space left for you on the disk',
  ENAMETOOLONG: 'the name is too long',
  EEXIST: 'a link to nothing stands there',
  EIO: 'the disk could not take it',
  ENOENT: 'the system takes no files there',
  ENOTDIR: 'there is a file where a folder should be',
};

/** Why the system would not write, in words a person can act on. */
export const whyNotWritten = (cause: unknown): string => {
  const code = systemCode(cause);
  return REASONS[code ?? ''] ?? `the system could not write there (${code ?? 'unknown reason'})`;
};

type Standing = 'folder' | 'file' | 'nothing';

const whatStands = async (path: string): Promise<Standing> => {
  try {
    return (await stat(path)).isDirectory() ? 'folder' : 'file';
  } catch (cause) {
    const code = systemCode(cause);
    if (code === 'ENOENT' || code === 'ENOTDIR') return 'nothing';
    throw cause;
  }
};

/** The folders that are missing on the way to a path, the uppermost first; or the file in the way. */
const missingTo = async (path: string): Promise<readonly string[] | { readonly file: string }> => {
  const missing: string[] = [];
  for (let at = path; ; at = dirname(at)) {
    const standing = await whatStands(at);
    if (standing === 'file') return { file: at };
    if (standing === 'folder' || at === dirname(at)) return missing;
    missing.unshift(at);
  }
};

const make = async (folder: string): Promise<void> => {
  try {
    await mkdir(folder);
  } catch (cause) {
    // Another program may have made it in the meantime.
    if (systemCode(cause) !== 'EEXIST' || (await whatStands(folder)) !== 'folder') throw cause;
  }
};

/**
 * Makes a folder and those on the way to it, one level at a time: `mkdir` with `recursive` never
 * comes back where a folder exists in which none can be made, as on Linux under `/proc`.
 *
 * @returns null once the folder is there, else why it cannot be, in plain words
 */
export const makeFolder = async (path: string): Promise<string | null> => {
  try {
    const missing = await missingTo(resolve(path));
    if ('file' in missing) return `${missing.file} is a file, not a folder`;
    for (const folder of missing) await make(folder);
    return null;
  } catch (cause) {
    return whyNotWritten(cause);
  }
};
