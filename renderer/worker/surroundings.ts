import { detect } from 'chardet';
import type { Surroundings } from './answerer.ts';

/** The system's own hash is there in secure contexts only. */
const sha256 = async (bytes: Uint8Array<ArrayBuffer>): Promise<string | null> => {
  if (!isSecureContext) return null;
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
};

/** What a worker in a browser supplies to the analysis. */
export const SURROUNDINGS: Surroundings = { guessEncoding: detect, sha256 };
