import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { namedFiles, type FiringFiles } from '../electron/host/firing-arguments.ts';
import { serveFiring } from '../electron/host/loopback/serve-firing.ts';
import { loadPage } from '../electron/host/page.ts';
import type { ExitStatus, Io } from './io.ts';
import { main } from './main.ts';
import { openInBrowser } from './open-browser.ts';
import { openDesktop } from './open-desktop.ts';
import { parseStart } from './start-command.ts';
import type { StartWorker } from './workers.ts';

/** Where things are, for one start. */
export interface StartPlaces {
  /** The project's own folder, with the samples and what was built. */
  readonly project: string;
  /** The folder that the person stands in. */
  readonly where: string;
  /** Where the person's settings are kept. */
  readonly settings: string;
}

/** The ways to show the window; others than the machine's own in tests. */
export interface Doors {
  readonly openDesktop: typeof openDesktop;
  readonly openInBrowser: typeof openInBrowser;
  /** Is called with what ends the server, for Ctrl-C. */
  readonly onServing: (end: () => void) => void;
}

export const DOORS: Doors = {
  openDesktop,
  openInBrowser,
  onServing: (end) => {
    // Before the listener that ends the process: pages are told first.
    process.prependOnceListener('SIGINT', end);
  },
};

/** The sample that is shown where no log is given: a firing with something to tell. */
const SAMPLE = 'underfired-glaze';
const SAMPLES = 'sample-traces';

const SAMPLE_NOTE =
  'A bundled sample, from a studio that does not exist. Your own: npm start -- LOG [--schedule FILE]\n\n';

/** The project's own folder: the first one upwards that holds the samples. */
export const projectFolder = (from: string): string => {
  for (let folder = from; ; folder = dirname(folder)) {
    if (existsSync(join(folder, SAMPLES)) || folder === dirname(folder)) return folder;
  }
};

const sampleFiles = (project: string): FiringFiles => {
  const sample = join(project, SAMPLES, SAMPLE);
  return { logs: [`${sample}.txt`], schedule: `${sample}.schedule.json` };
};

/** The first file that is not there: nothing is opened for a name that was mistyped. */
const missingOf = ({ logs, schedule }: FiringFiles): string | null =>
  [...logs, ...(schedule === null ? [] : [schedule])].find((path) => !existsSync(path)) ?? null;

/** Prints the verdict as it would be read out; the window shows the rest. */
const sayVerdict = ({ logs, schedule }: FiringFiles, io: Io, startWorker: StartWorker) =>
  main(
    ['analyze', ...(schedule === null ? [] : ['--schedule', schedule]), '--', ...logs],
    io,
    startWorker,
  );

/** Serves the page to the person's browser until the page is closed or Ctrl-C is pressed. */
const showInBrowser = async (
  files: FiringFiles,
  { project, settings }: StartPlaces,
  io: Io,
  doors: Doors,
): Promise<void> => {
  const page = await loadPage(join(project, 'dist', 'renderer'));
  const { address, ended, close } = await serveFiring(page, namedFiles(files), settings);
  doors.onServing(close);
  const isOpen = await doors.openInBrowser(address);
  const here = isOpen
    ? `\nAfterfire is open in your browser, at ${address}\n`
    : `\nOpen this address in a browser on this machine:\n${address}\n`;
  await io.writeOut(`${here}It ends when you close the page, or with Ctrl-C here.\n`);
  await ended;
};

/**
 * What `npm start` does: prints the verdict on a log (a bundled sample where none is given) and
 * opens the window on it; in the person's browser, where there is no window to be had.
 */
export const startApp = async (
  args: readonly string[],
  io: Io,
  startWorker: StartWorker,
  places: StartPlaces,
  doors: Doors = DOORS,
): Promise<ExitStatus> => {
  const asked = parseStart(args, places.where);
  if ('print' in asked) {
    if (asked.status === 0) await io.writeOut(asked.print);
    else io.writeError(asked.print);
    return asked.status;
  }
  const isSample = asked.files.logs.length === 0 && asked.files.schedule === null;
  if (isSample) await io.writeOut(SAMPLE_NOTE);
  const files = isSample ? sampleFiles(places.project) : asked.files;
  const missing = missingOf(files);
  if (missing !== null) {
    io.writeError(`cannot read ${missing}: there is no such file\n`);
    return 1;
  }
  // What cannot be read is shown in the window too, with what to do about it.
  if (files.logs.length > 0) await sayVerdict(files, io, startWorker);
  if (!asked.inBrowser) {
    const desktop = await doors.openDesktop(places.project, files, io);
    if ('ended' in desktop) {
      const end = await desktop.ended;
      if (end === 'closed') return 0;
      io.writeError(
        `\nThe desktop window ended with a fault (${end.broke}). Your files are untouched.\n`,
      );
      return 1;
    }
    io.writeError(
      `\nNo desktop window here: ${desktop.failed}. The same in your browser instead:\n`,
    );
  }
  await showInBrowser(files, places, io, doors);
  return 0;
};
