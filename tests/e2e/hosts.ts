import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, vi } from 'vitest';
import { launchDesktop } from '../electron/double/launch.ts';
import { launchBrowser, openWindow } from './window.ts';

/** A deed of the person: a click, a key press. */
export type Deed = () => Promise<unknown>;

export interface SavedFile {
  /** The name that the window proposed. */
  readonly fileName: string;
  /** The name that the host says it was saved by: the chosen one, where there is a dialog. */
  readonly savedAs: string;
  readonly text: string;
}

/** The window over one host, and what a person does outside of its page. */
export interface HostedWindow {
  readonly page: Page;
  /** Chooses files in the dialog that the deed opens. */
  readonly choose: (paths: readonly string[], deed: Deed) => Promise<void>;
  /** Lets the file be saved that the deed wants saved. */
  readonly save: (deed: Deed) => Promise<SavedFile>;
  /** What the system's clipboard holds. */
  readonly copied: () => Promise<string>;
  /** Errors and warnings of the console, of scripts, and of the page's policy. */
  readonly problems: () => readonly string[];
  /** Requests to anything but the host, those that were refused too. */
  readonly strayRequests: () => readonly string[];
  readonly close: () => Promise<void>;
}

export interface HostKind {
  readonly name: string;
  readonly open: (browser: Browser, context: BrowserContextOptions) => Promise<HostedWindow>;
}

const SIZE = { width: 1280, height: 800 };

/** The page of the loopback server: file choosers and downloads. */
const browserHost: HostKind = {
  name: 'the browser host',
  open: async (browser, context) => {
    const { page, problems, strayRequests, close } = await openWindow(browser, context);
    return {
      ...{ page, close },
      choose: async (paths, deed) => {
        const [chooser] = await Promise.all([page.waitForEvent('filechooser'), deed()]);
        await chooser.setFiles([...paths]);
      },
      save: async (deed) => {
        const [download] = await Promise.all([page.waitForEvent('download'), deed()]);
        const text = readFileSync(await download.path(), 'utf8');
        const fileName = download.suggestedFilename();
        return { fileName, savedAs: fileName, text };
      },
      copied: () => page.evaluate(() => navigator.clipboard.readText()),
      problems: () => problems,
      strayRequests: () => strayRequests,
    };
  },
};

/** The unmodified main process over the double of Electron: native dialogs and real files. */
const mainProcess: HostKind = {
  name: 'the main process',
  open: async (browser, context) => {
    const desktop = await launchDesktop(browser, { context: { viewport: SIZE, ...context } });
    const shown = await desktop.shownWindow();
    const page = await desktop.page();
    page.setDefaultTimeout(15_000);
    await page.locator('.bar').waitFor();
    const folder = mkdtempSync(join(tmpdir(), 'saved-'));
    const { answers, dialogs, clipboard } = desktop.control;
    return {
      page,
      choose: async (paths, deed) => {
        answers.open.push([...paths]);
        await deed();
        await vi.waitFor(() => {
          expect(answers.open, 'the dialog was not opened').toEqual([]);
        }, 15_000);
      },
      save: async (deed) => {
        const path = join(folder, `${dialogs.length}`);
        answers.save.push(path);
        await deed();
        await vi.waitFor(() => {
          expect(existsSync(path), 'nothing was saved').toBe(true);
        }, 15_000);
        const { defaultPath } = dialogs.at(-1)?.options as { readonly defaultPath: string };
        const text = readFileSync(path, 'utf8');
        return { fileName: basename(defaultPath), savedAs: basename(path), text };
      },
      copied: () => Promise.resolve(clipboard.at(-1) ?? ''),
      problems: () => shown.complaints,
      strayRequests: () => [...shown.letOut, ...shown.refused],
      close: async () => {
        await desktop.end();
        rmSync(folder, { recursive: true, force: true });
      },
    };
  },
};

export const HOSTS: readonly HostKind[] = [browserHost, mainProcess];

interface How {
  readonly context?: BrowserContextOptions;
  /** Whether each test has a window of its own, or all of a host's tests share one. */
  readonly lasts?: 'a test' | 'the suite';
}

/** Nothing may have been complained of, and nothing may have wanted to leave the machine. */
const expectQuiet = (window: HostedWindow): void => {
  expect(window.problems()).toEqual([]);
  expect(window.strayRequests()).toEqual([]);
};

/**
 * The same suite over the browser host and over the main process, in one browser. After every test
 * the window must have complained of nothing and have asked nobody but its host.
 */
export const overBothHosts = (
  suite: (window: () => HostedWindow) => void,
  { context = {}, lasts = 'a test' }: How = {},
): void => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());
  describe.each(HOSTS)('over $name', ({ open }) => {
    let window: HostedWindow;
    const [before, after] =
      lasts === 'a test' ? [beforeEach, afterEach] : ([beforeAll, afterAll] as const);
    before(async () => {
      window = await open(browser, context);
    });
    after(() => window.close());
    afterEach(() => {
      expectQuiet(window);
    });
    suite(() => window);
  });
};
