import { dialog, type BrowserWindow, type FileFilter } from 'electron';
import { basename, extname } from 'node:path';
import type { FileToSave, Saved } from './host/contract.ts';
import type { NamedFile } from './host/handed-files.ts';
import { whyNotWritten } from './host/not-written.ts';
import { writeWhole } from './host/write-whole.ts';

const ANY: FileFilter = { name: 'All files', extensions: ['*'] };
const LOGS: FileFilter = {
  name: 'Temperature logs',
  extensions: ['csv', 'txt', 'tsv', 'log', 'dat', 'json', 'jsonl', 'ndjson'],
};
const SCHEDULES: FileFilter = { name: 'Firing schedules', extensions: ['json', 'csv'] };

const KINDS: Readonly<Record<FileToSave['kind'], string>> = {
  'text/html': 'Report',
  'text/csv': 'Table',
  'text/plain': 'Text',
  'application/json': 'Schedule',
};

/** Lets the person choose logs; none if they change their mind. */
export const chooseLogs = async (window: BrowserWindow): Promise<NamedFile[]> => {
  const { filePaths } = await dialog.showOpenDialog(window, {
    title: 'Open the log of a firing',
    filters: [LOGS, ANY],
    properties: ['openFile', 'multiSelections'],
  });
  return filePaths.map((path) => ({ path, role: 'log' }));
};

/** Lets the person choose a schedule; none if they change their mind. */
export const chooseSchedule = async (window: BrowserWindow): Promise<NamedFile[]> => {
  const { filePaths } = await dialog.showOpenDialog(window, {
    title: 'Open the schedule it was to follow',
    filters: [SCHEDULES, ANY],
    properties: ['openFile'],
  });
  return filePaths.slice(0, 1).map((path) => ({ path, role: 'schedule' }));
};

const filterFor = ({ fileName, kind }: FileToSave): FileFilter[] => {
  const extension = extname(fileName).slice(1);
  return extension === '' ? [ANY] : [{ name: KINDS[kind], extensions: [extension] }, ANY];
};

/** Asks where a file of the page is to go, and writes it there whole or not at all. */
export const saveFile = async (window: BrowserWindow, file: FileToSave): Promise<Saved> => {
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    defaultPath: file.fileName,
    filters: filterFor(file),
  });
  if (canceled || filePath === '') return { outcome: 'cancelled' };
  try {
    await writeWhole(filePath, file.text);
    return { outcome: 'saved', fileName: basename(filePath) };
  } catch (cause) {
    return { outcome: 'failed', why: whyNotWritten(cause) };
  }
};
