import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';
import { makeFolder } from './make-folder.ts';

/** A small file of settings of one shape. */
export interface KeptJson<Value> {
  /** What is kept in a folder; null where nothing is yet, or it cannot be read or understood. */
  readonly read: (folder: string) => Value | null;
  /** Keeps a value; a folder that may not be written to is no reason to disturb anyone. */
  readonly keep: (folder: string, value: Value) => void;
}

/**
 * A file of settings by its name and shape. It is read and written at once, not by and by: it is
 * some hundred bytes, and a closing window does not wait.
 */
export const keptJson = <Value>(fileName: string, shape: z.ZodType<Value>): KeptJson<Value> => ({
  read: (folder) => {
    try {
      return shape.parse(JSON.parse(readFileSync(join(folder, fileName), 'utf8')));
    } catch {
      return null;
    }
  },
  keep: (folder, value) => {
    const path = join(folder, fileName);
    const partial = `${path}.${process.pid}.part`;
    try {
      makeFolder(folder);
      writeFileSync(partial, `${JSON.stringify(value, null, 2)}\n`);
      renameSync(partial, path);
    } catch {
      // It holds for this session all the same.
    }
  },
});
