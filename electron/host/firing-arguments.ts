import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import type { NamedFile } from './handed-files.ts';

/** What to begin with: `LOG… [--schedule FILE]`, as full paths. */
export const zFiringFiles = z.strictObject({
  logs: z.array(z.string()),
  schedule: z.string().nullable(),
});
export type FiringFiles = z.infer<typeof zFiringFiles>;

/**
 * Reads `LOG… [--schedule FILE]` where other switches may stand beside them: the system and Chromium
 * pass some of their own, which are left alone.
 *
 * @param args the arguments after the program's own
 * @param where the folder that the person stands in
 */
export const firingFiles = (args: readonly string[], where: string): FiringFiles => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { schedule: { type: 'string' } },
    allowPositionals: true,
    strict: false,
  });
  const { schedule } = values;
  return {
    logs: positionals.map((path) => resolve(where, path)),
    schedule: typeof schedule === 'string' ? resolve(where, schedule) : null,
  };
};

/**
 * The same as files to hand to the page. A double click gives a schedule the same way as a log, so
 * the page tells them apart.
 */
export const namedFiles = ({ logs, schedule }: FiringFiles): NamedFile[] => [
  ...logs.map((path): NamedFile => ({ path, role: 'unknown' })),
  ...(schedule === null ? [] : [{ path: schedule, role: 'schedule' } as const]),
];
