import { mkdirSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { NotWritten } from './not-written.ts';
import { systemCode } from './system-code.ts';

type Standing = 'folder' | 'file' | 'nothing';

const whatStands = (path: string): Standing => {
  try {
    return statSync(path).isDirectory() ? 'folder' : 'file';
  } catch (cause) {
    const code = systemCode(cause);
    if (code === 'ENOENT' || code === 'ENOTDIR') return 'nothing';
    throw cause;
  }
};

/** The folders that are missing on the way to a path, the uppermost first. */
const missingTo = (path: string): readonly string[] => {
  const missing: string[] = [];
  for (let at = path; ; at = dirname(at)) {
    const standing = whatStands(at);
    if (standing === 'file') throw new NotWritten('ENOTDIR', `${at} is a file, not a folder`);
    if (standing === 'folder' || at === dirname(at)) return missing;
    missing.unshift(at);
  }
};

const make = (folder: string): void => {
  try {
    mkdirSync(folder);
  } catch (cause) {
    // Another program may have made it in the meantime.
    if (systemCode(cause) !== 'EEXIST' || whatStands(folder) !== 'folder') throw cause;
  }
};

/**
 * Makes a folder and those on the way to it, one level at a time: `mkdir` with `recursive` never
 * comes back where a folder exists in which none can be made, as on Linux under `/proc`.
 *
 * It does not wait its turn: settings are kept while a window closes, and nothing waits for them.
 *
 * @throws what the system says, or that a file is in the way; `whyNotWritten` has words for both
 */
export const makeFolder = (path: string): void => {
  for (const folder of missingTo(resolve(path))) make(folder);
};
