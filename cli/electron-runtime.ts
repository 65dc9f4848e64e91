import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Io } from './io.ts';

/** The program that Electron's windows run in, or one sentence part on why it cannot be had. */
export type Runtime = { readonly program: string } | { readonly missing: string };

/** About 110 MB over a slow line; whoever cannot wait presses Ctrl-C or says --browser (chosen). */
const FETCH_LIMIT_MS = 5 * 60_000;

const FETCHING =
  'Fetching the desktop window’s runtime, once (some 110 MB; skip it with --browser) …\n';

/** Electron's package in the project, as its own scripts find it; null where it is not installed. */
const electronFolder = (project: string): string | null => {
  try {
    return dirname(createRequire(join(project, 'package.json')).resolve('electron/package.json'));
  } catch {
    return null;
  }
};

/** Where the package says its program is, once that has been fetched. */
const fetched = (folder: string): string | null => {
  const note = join(folder, 'path.txt');
  if (!existsSync(note)) return null;
  const dist = process.env['ELECTRON_OVERRIDE_DIST_PATH'] ?? join(folder, 'dist');
  const program = join(dist, readFileSync(note, 'utf8').trim());
  return existsSync(program) ? program : null;
};

/** Runs the package's own script that fetches the runtime for this system. */
const fetchInto = (folder: string): Promise<boolean> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [join(folder, 'install.js')], {
      stdio: 'ignore',
      timeout: FETCH_LIMIT_MS,
    });
    child.on('error', () => {
      resolve(false);
    });
    child.on('exit', (code) => {
      resolve(code === 0);
    });
  });

/** The least Node that Electron's package says it needs to fetch its runtime. */
const NODE_TO_FETCH: readonly [major: number, minor: number] = [22, 12];

const isOldNode = (version: string): boolean => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major < NODE_TO_FETCH[0] || (major === NODE_TO_FETCH[0] && minor < NODE_TO_FETCH[1]);
};

/** Finds Electron's runtime in the project, or fetches it. */
export const electronRuntime = async (project: string, io: Io): Promise<Runtime> => {
  const folder = electronFolder(project);
  if (folder === null) return { missing: 'Electron is not installed' };
  const there = fetched(folder);
  if (there !== null) return { program: there };
  await io.writeOut(FETCHING);
  const program = (await fetchInto(folder)) ? fetched(folder) : null;
  if (program !== null) return { program };
  const { node } = process.versions;
  const hint = isOldNode(node) ? `, which wants Node ${NODE_TO_FETCH.join('.')} or newer` : '';
  return { missing: `its runtime could not be fetched${hint}` };
};
