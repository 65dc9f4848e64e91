import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const NAMES = [
  ...['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'],
  ...['microsoft-edge', 'microsoft-edge-stable', 'chrome'],
];

const MAC_APPS = [
  'Chromium.app/Contents/MacOS/Chromium',
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const WINDOWS_PROGRAMS = [
  'Chromium\\Application\\chrome.exe',
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

const across = (folders: readonly (string | undefined)[], names: readonly string[]): string[] =>
  folders.flatMap((folder) => (folder ? names.map((name) => join(folder, name)) : []));

const usualPlaces = (): string[] => {
  const { env, platform } = process;
  if (platform === 'win32') {
    const folders = [env['PROGRAMFILES'], env['PROGRAMFILES(X86)'], env['LOCALAPPDATA']];
    return across(folders, WINDOWS_PROGRAMS);
  }
  const onPath = across((env['PATH'] ?? '').split(delimiter), NAMES);
  if (platform !== 'darwin') return onPath;
  const applications = ['Applications', join(env['HOME'] ?? '', 'Applications')];
  return [
    ...across(
      applications.map((folder) => join('/', folder)),
      MAC_APPS,
    ),
    ...onPath,
  ];
};

/** Whether a browser starts: some systems put a script there that only says how to install one. */
const starts = (path: string): boolean =>
  // On Windows, asking for the version opens a window.
  process.platform === 'win32' ||
  spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;

/**
 * A Chromium, Chrome or Edge of this machine: the one that CHROME_PATH names, one in the usual
 * places, or playwright's own; null where there is none.
 */
export const findBrowser = (): string | null => {
  const named = process.env['CHROME_PATH'];
  const places = [...(named ? [named] : []), ...usualPlaces(), chromium.executablePath()];
  return places.find((path) => existsSync(path) && starts(path)) ?? null;
};

export const HOW_TO_GET_ONE =
  'The tests of the window need Chromium, Chrome or Edge, and there is none here. Install one of ' +
  'them, or run `npx playwright-core install chromium`, or say where yours is: CHROME_PATH=PATH.';

let known: string | undefined;

/** The browser to test with; found once. */
export const theBrowser = (): string => {
  known ??= findBrowser() ?? undefined;
  if (known === undefined) throw new Error(HOW_TO_GET_ONE);
  return known;
};
