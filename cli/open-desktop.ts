import { spawn, type ChildProcess } from 'node:child_process';
import type { FiringFiles } from '../electron/host/firing-arguments.ts';
import { SHOWN } from '../electron/host/shown.ts';
import { electronRuntime } from './electron-runtime.ts';
import { hasScreen } from './has-screen.ts';
import type { Io } from './io.ts';

/** A window that has come up and when it is closed; or one sentence part on why none could. */
export type Desktop = { readonly closed: Promise<void> } | { readonly failed: string };

/** A slow disk and a cold start (chosen). */
const START_LIMIT_MS = 30_000;

/** The arguments as the main process reads them (`firingFiles`). */
const asArguments = ({ logs, schedule }: FiringFiles): string[] => [
  ...(schedule === null ? [] : ['--schedule', schedule]),
  ...logs,
];

/** Waits until the window is there, or the program has ended without one. */
const comesUp = (child: ChildProcess, limitMs: number): Promise<Desktop> =>
  new Promise((resolve) => {
    const closed = new Promise<void>((done) => child.once('exit', () => done()));
    const failed = (why: string) => {
      clearTimeout(tooLong);
      resolve({ failed: why });
    };
    const tooLong = setTimeout(() => {
      child.kill();
      failed('it did not come up in time');
    }, limitMs);
    let said = '';
    child.stdout?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (!said.includes(SHOWN)) return;
      clearTimeout(tooLong);
      resolve({ closed });
    });
    child.once('error', () => failed('its runtime could not be started'));
    child.once('exit', (code) => {
      clearTimeout(tooLong);
      // A second start hands its files to the window that is open, and ends.
      if (code === 0) resolve({ closed });
      else failed('its runtime could not be started');
    });
  });

/** Opens the desktop window of the project on a firing, if this machine can. */
export const openDesktop = async (
  project: string,
  files: FiringFiles,
  io: Io,
  limitMs = START_LIMIT_MS,
): Promise<Desktop> => {
  if (!hasScreen(process)) return { failed: 'this machine shows no screen' };
  const runtime = await electronRuntime(project, io);
  if ('missing' in runtime) return { failed: runtime.missing };
  const child = spawn(runtime.program, [project, ...asArguments(files)], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  return comesUp(child, limitMs);
};
