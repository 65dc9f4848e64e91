import type { HandedFile } from '../../electron/host/contract.ts';
import { opened } from './opened.ts';
import type { Beginning, Opened } from './interface.ts';
import { ask, type Wire } from './transport.ts';

/** Fetches the files that the host handed over. */
export const fetchFiles = async (wire: Wire, files: readonly HandedFile[]): Promise<Opened> =>
  opened(
    await Promise.all(
      files.map(async ({ ticket, fileName, role }) => ({
        fileName,
        role,
        content: await ask(wire, 'read-file', { ticket }),
      })),
    ),
  );

/** Asks what to begin with, once: every call has the same answer. */
export const beginning = (wire: Wire): (() => Promise<Beginning>) => {
  const begin = async (): Promise<Beginning> => {
    const { files, ...kept } = await ask(wire, 'open-session', null);
    return { opened: await fetchFiles(wire, files), ...kept };
  };
  let begun: Promise<Beginning> | undefined;
  return () => (begun ??= begin());
};
