import { randomBytes } from 'node:crypto';
import { basename } from 'node:path';
import { Refusal } from '../../core/model/refusal.ts';
import type { FileContent, FileRole, HandedFile } from './contract.ts';
import { readLogFile } from './files.ts';

/** A file that the person, the system or the command line named. */
export interface NamedFile {
  readonly path: string;
  readonly role: FileRole;
}

const MAX_NAME_CHARS = 1024;

/** Bytes with a buffer to themselves: Node may lend a view of its pool, which must not go along. */
const ownBytes = (bytes: Uint8Array): Uint8Array<ArrayBuffer> => {
  const { buffer, byteLength } = bytes;
  const isAlone = buffer instanceof ArrayBuffer && buffer.byteLength === byteLength;
  return isAlone ? new Uint8Array(buffer) : new Uint8Array(bytes);
};

/**
 * The files that the page may read. It is given tickets, never paths: what was not handed to it
 * cannot be asked for.
 */
export const handedFiles = () => {
  const paths = new Map<string, string>();
  return {
    /** Gives each file a ticket; the file itself is not touched yet. */
    hand: (files: readonly NamedFile[]): HandedFile[] =>
      files.map(({ path, role }) => {
        const ticket = randomBytes(16).toString('base64url');
        paths.set(ticket, path);
        return { ticket, fileName: basename(path).slice(0, MAX_NAME_CHARS) || path, role };
      }),

    /** The bytes behind a ticket, or one sentence on why the machine would not give them. */
    read: async ({ ticket }: { readonly ticket: string }): Promise<FileContent> => {
      const path = paths.get(ticket);
      if (path === undefined) return { refused: 'this file was not opened in this session' };
      try {
        return { bytes: ownBytes(await readLogFile(path)) };
      } catch (cause) {
        if (cause instanceof Refusal) return { refused: cause.message };
        throw cause;
      }
    },
  };
};

export type HandedFiles = ReturnType<typeof handedFiles>;
