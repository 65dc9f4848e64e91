import type { FileToSave } from '../../electron/host/contract.ts';

/** Long enough for the browser to have taken the file (chosen). */
const KEPT_MS = 60_000;

/** Downloads a file, which is how a browser saves. */
export const download = ({ fileName, kind, text }: FileToSave): void => {
  const address = URL.createObjectURL(new Blob([text], { type: `${kind};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, KEPT_MS);
};
