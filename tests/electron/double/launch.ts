import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { vi } from 'vitest';
import { beginRun, type Control } from './control.ts';
import type * as electronDouble from './electron.ts';

const ROOT = join(import.meta.dirname, '../../..');
const MAIN = join(ROOT, 'dist/electron/main.js');

export type Double = typeof electronDouble;
type Window = InstanceType<Double['BrowserWindow']>;

/** The desktop program as it runs over the double. */
export interface Desktop {
  readonly electron: Double;
  readonly control: Control;
  /** The window, once its page has been loaded and shown. */
  readonly shownWindow: () => Promise<Window>;
  /** The page in that window. */
  readonly page: () => Promise<Page>;
  /** What the program wrote to standard output. */
  readonly said: () => string;
  readonly end: () => Promise<void>;
}

export interface Launch {
  readonly args?: readonly string[];
  /** Where settings are kept; a new folder, if none is given. */
  readonly userData?: string;
  /** Whether no other instance is running. */
  readonly isFirst?: boolean;
  /** The screen and the system that the window is opened on, where they matter. */
  readonly context?: BrowserContextOptions;
}

const newRun = (browser: Browser, userData: string, launch: Launch): Control => ({
  browser,
  userData,
  context: launch.context ?? {},
  isFirst: launch.isFirst ?? true,
  answers: { open: [], save: [], message: [] },
  dialogs: [],
  clipboard: [],
  recent: [],
  switches: [],
  menu: [],
  lockData: undefined,
  isSandboxed: false,
  hasQuit: false,
  exitCode: null,
});

/** Runs the built main process, unmodified, over the double. */
export const launchDesktop = async (browser: Browser, launch: Launch = {}): Promise<Desktop> => {
  if (!existsSync(MAIN)) throw new Error('Electron’s scripts are not built: npm run build');
  const own = launch.userData === undefined ? mkdtempSync(join(tmpdir(), 'desktop-')) : null;
  const run = newRun(browser, launch.userData ?? own ?? '', launch);
  const { argv } = process;
  process.argv = ['electron', ROOT, ...(launch.args ?? [])];
  const listening = process.stdout.listeners('error');
  let said = '';
  const writing = vi.spyOn(process.stdout, 'write').mockImplementation((text, ...rest) => {
    said += String(text);
    for (const then of rest) if (typeof then === 'function') then();
    return true;
  });
  beginRun(run);
  vi.resetModules();
  const electron = await import('./electron.ts');
  await import(MAIN);
  electron.app.becomeReady();
  const shownWindow = () =>
    vi.waitFor(
      () => {
        const window = electron.BrowserWindow.getAllWindows().at(-1);
        if (!window?.isVisible()) throw new Error('no window is shown');
        return window;
      },
      { timeout: 15_000, interval: 20 },
    );
  return {
    electron,
    control: run,
    shownWindow,
    page: async () => {
      const { page } = (await shownWindow()).webContents;
      if (page === undefined) throw new Error('the window has no page');
      return page;
    },
    said: () => said,
    end: async () => {
      writing.mockRestore();
      // The program listens for as long as its process lives, which here is that of all tests.
      for (const listener of process.stdout.listeners('error')) {
        if (!listening.includes(listener)) process.stdout.off('error', listener as () => void);
      }
      process.argv = argv;
      const pages = electron.BrowserWindow.getAllWindows().map((window) => window.end());
      await Promise.all(pages);
      if (own !== null) rmSync(own, { recursive: true, force: true });
    },
  };
};
