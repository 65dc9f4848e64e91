import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import type { NamedFile } from '../../electron/host/handed-files.ts';
import { serveFiring } from '../../electron/host/loopback/serve-firing.ts';
import { loadPage } from '../../electron/host/page.ts';
import { COMPLAIN_OF_WEBRTC, complaintsOf } from '../browser/complaints.ts';
import { theBrowser } from '../browser/find-browser.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const BUILT = join(ROOT, 'dist', 'renderer');
export const SAMPLES = join(ROOT, 'sample-traces');

/** A sample's file as the window would be given it. */
export const sampleText = (name: string): string => readFileSync(join(SAMPLES, name), 'utf8');

/** The window in a real browser, served by the loopback host as `npm start` serves it. */
export interface TestWindow {
  readonly page: Page;
  /** Errors of the console, of scripts, and of the page's policy. */
  readonly problems: string[];
  /** Requests that went anywhere but to the host. */
  readonly strayRequests: string[];
  readonly close: () => Promise<void>;
}

export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: theBrowser(),
    // Chromium refuses its sandbox to root, as which containers test.
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });

const servedPage = async () => {
  if (!existsSync(BUILT)) throw new Error('the window is not built: run `npm run build` first');
  return loadPage(BUILT);
};

/** Opens the window, with files to begin with. */
export const openWindow = async (
  browser: Browser,
  options: BrowserContextOptions = {},
  begin: readonly NamedFile[] = [],
): Promise<TestWindow> => {
  const settings = mkdtempSync(join(tmpdir(), 'afterfire-settings-'));
  const host = await serveFiring(await servedPage(), begin, settings);
  const origin = new URL(host.address).origin;
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
    ...options,
  });
  await context.grantPermissions(['clipboard-read', 'clipboard-write'], { origin });
  await context.addInitScript({ content: COMPLAIN_OF_WEBRTC });
  const page = await context.newPage();
  const problems = complaintsOf(page);
  const strayRequests: string[] = [];
  // Whoever waits for a file dialog just before a key press would miss it: it is caught from now on.
  page.on('filechooser', () => undefined);
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.origin !== origin && url.protocol !== 'blob:') strayRequests.push(request.url());
  });
  page.on('websocket', (socket) => strayRequests.push(socket.url()));
  page.setDefaultTimeout(15_000);
  await page.goto(host.address);
  await page.locator('.bar').waitFor();
  return {
    page,
    problems,
    strayRequests,
    close: async () => {
      await context.close();
      host.close();
      rmSync(settings, { recursive: true, force: true });
    },
  };
};

export interface DroppedFile {
  readonly name: string;
  /** Bytes, so that any encoding can be dropped. */
  readonly bytes: Uint8Array;
}

export const sampleFile = (name: string): DroppedFile => ({
  name,
  bytes: readFileSync(join(SAMPLES, name)),
});

export const textFile = (name: string, text: string): DroppedFile => ({
  name,
  bytes: new TextEncoder().encode(text),
});

/** Drops files on a part of the window as the system would: over it, then let go. */
export const dropFiles = async (
  page: Page,
  files: readonly DroppedFile[],
  onto = 'body',
): Promise<void> => {
  const plain = files.map(({ name, bytes }) => ({
    name,
    base64: Buffer.from(bytes).toString('base64'),
  }));
  await page.locator(onto).evaluate((target, dropped) => {
    const dataTransfer = new DataTransfer();
    for (const { name, base64 } of dropped) {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name));
    }
    for (const type of ['dragover', 'drop']) {
      const event = new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true });
      target.dispatchEvent(event);
    }
  }, plain);
};

/** Waits until a firing stands on the sheet and nothing is being worked in. */
export const settled = async (page: Page): Promise<void> => {
  await page.locator('.sheet[aria-busy="false"] .verdict').waitFor();
};

/** What the crosshair reads, by the readout's own names. */
export const readout = (page: Page): Promise<Record<string, string>> =>
  page
    .locator('.readout-cell')
    .evaluateAll((cells) =>
      Object.fromEntries(
        cells.map((cell) => [
          cell.querySelector('dt')?.textContent ?? '',
          cell.querySelector('dd')?.textContent ?? '',
        ]),
      ),
    );
