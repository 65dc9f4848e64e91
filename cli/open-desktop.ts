import { spawn, type ChildProcess } from 'node:child_process';
import type { FiringFiles } from '../electron/host/firing-arguments.ts';
import { HANDED_ON, SHOWN } from '../electron/host/shown.ts';
import { electronRuntime } from './electron-runtime.ts';
import { hasScreen } from './has-screen.ts';
import type { Io } from './io.ts';

/** How a window ended: closed by the person, or with a fault, in one sentence part. */
export type DesktopEnd = 'closed' | { readonly broke: string };

/** A window that has come up and how it ends; or one sentence part on why none could. */
export type Desktop = { readonly ended: Promise<DesktopEnd> } | { readonly failed: string };

/** Signals by which a person or the system ends a program on purpose. */
const MEANT: readonly NodeJS.Signals[] = ['SIGINT', 'SIGTERM', 'SIGHUP'];

const endOf = (code: number | null, signal: NodeJS.Signals | null): DesktopEnd => {
  if (code === 0 || (signal !== null && MEANT.includes(signal))) return 'closed';
  return { broke: signal ?? `exit code ${code}` };
};

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
    const ended = new Promise<DesktopEnd>((done) =>
      child.once('exit', (code, signal) => done(endOf(code, signal))),
    );
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
      // A second start hands its files to the window that is open, and ends.
      if (!said.includes(SHOWN) && !said.includes(HANDED_ON)) return;
      clearTimeout(tooLong);
      resolve({ ended });
    });
    child.once('error', () => failed('its runtime could not be started'));
    // Once all that it said has been heard.
    child.once('close', (code) =>
      failed(code === 0 ? 'it ended without a window' : 'its runtime could not be started'),
    );
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
