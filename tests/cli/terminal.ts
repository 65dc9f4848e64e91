import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { main } from '../../cli/main.ts';
import type { ExitStatus, Io } from '../../cli/io.ts';
import { workersOf } from '../../cli/workers.ts';

export const WORKERS = workersOf(new URL('../../cli/afterfire.ts', import.meta.url).href);

/** What a command wrote, and how it ended. */
export interface Ran {
  readonly status: ExitStatus;
  readonly out: string;
  readonly error: string;
}

/** An Io that keeps what is written. */
export const keepingIo = (isWatched = false) => {
  const kept = { out: '', error: '' };
  const io: Io = {
    writeOut: (text) => {
      kept.out += text;
      return Promise.resolve();
    },
    writeError: (text) => {
      kept.error += text;
    },
    isWatched,
  };
  return { io, kept };
};

/** Runs the command line in this process, its workers from source. */
export const run = async (...args: string[]): Promise<Ran> => {
  const { io, kept } = keepingIo();
  const status = await main(args, io, WORKERS);
  return { status, ...kept };
};

/** A sample log or schedule of the repository. */
export const sample = (name: string): string =>
  fileURLToPath(new URL(`../../sample-traces/${name}`, import.meta.url));

/** A folder of its own for one test, gone after it. */
export const inFolder = async (use: (folder: string) => Promise<void> | void): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'afterfire-'));
  try {
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** Writes a file into a folder and gives its path. */
export const written = (folder: string, name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

/** A plain firing: 21 °C to 1000 °C at 200 °C/h, a reading a minute, then cooling. */
export const plainLog = (): string => {
  const rows = Array.from({ length: 600 }, (_, minute) => {
    const up = 21 + (minute * 200) / 60;
    const celsius = up <= 1000 ? up : 1000 - ((minute - 294) * 120) / 60;
    const clock = [Math.floor(minute / 60), minute % 60];
    return `${clock.map((part) => String(part).padStart(2, '0')).join(':')}:00,${celsius.toFixed(1)}`;
  });
  return `elapsed,kiln (°C)\n${rows.join('\n')}\n`;
};
