import { systemCode } from './system-code.ts';

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
  EISDIR: 'a folder stands there',
  EBUSY: 'another program has that file open; close it there, or take another name',
};

/** Something stands in the way of writing; its message is for the person. */
export class NotWritten extends Error {
  readonly code: string;

  /** @param code the system's word for the same */
  constructor(code: string, message: string = REASONS[code] ?? code) {
    super(message);
    this.code = code;
  }
}

/** Why the system would not write, in words a person can act on. */
export const whyNotWritten = (cause: unknown): string => {
  if (cause instanceof NotWritten) return cause.message;
  const code = systemCode(cause);
  return REASONS[code ?? ''] ?? `the system could not write there (${code ?? 'unknown reason'})`;
};
