import type { HandedFile } from '../../electron/host/contract.ts';
import { opened } from './opened.ts';
import type { Beginning, Coming } from './interface.ts';
import { ask, type Wire } from './transport.ts';

/** Fetches the files that the host handed over. */
export const fetchFiles = (wire: Wire, files: readonly HandedFile[]): Coming => {
  const fetching = files.map(async ({ ticket, fileName, role }) => ({
    fileName,
    role,
    content: await ask(wire, 'read-file', { ticket }),
  }));
  return {
    fileNames: files.map(({ fileName }) => fileName),
    opened: Promise.all(fetching).then(opened),
  };
};

/** Asks what to begin with, once: every call has the same answer. */
export const beginning = (wire: Wire): (() => Promise<Beginning>) => {
  const begin = async (): Promise<Beginning> => {
    const { files, ...kept } = await ask(wire, 'open-session', null);
    return { coming: fetchFiles(wire, files), ...kept };
  };
  let begun: Promise<Beginning> | undefined;
  return () => (begun ??= begin());
};
