import { createHash } from 'node:crypto';

/** The SHA-256 of bytes, in hexadecimal: names a log whatever its file is called. */
export const sha256 = (bytes: Uint8Array): string =>
  createHash('sha256').update(bytes).digest('hex');
