import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { Bridge } from '../../../electron/host/message-names.ts';
import { SAMPLES, settled } from '../../e2e/window.ts';
import { launchDesktop, type Desktop, type Launch } from './launch.ts';

export const LOG = join(SAMPLES, 'underfired-glaze.txt');
export const SCHEDULE = join(SAMPLES, 'underfired-glaze.schedule.json');
export const OTHER = join(SAMPLES, 'good-bisque.csv');

/** Starts programs that share one folder of settings, and ends them. */
export const programs = (browser: Browser) => {
  const folder = mkdtempSync(join(tmpdir(), 'programs-'));
  const running: Desktop[] = [];
  const launch = async (how: Launch = {}): Promise<Desktop> => {
    const desktop = await launchDesktop(browser, { userData: folder, ...how });
    running.push(desktop);
    return desktop;
  };
  return {
    /** Where they keep their settings; tests may put files there. */
    folder,
    launch,
    /** The program on a sample, once its verdict is drawn. */
    onSample: async (how: Launch = {}): Promise<{ desktop: Desktop; page: Page }> => {
      const desktop = await launch({ args: [LOG, '--schedule', SCHEDULE], ...how });
      const page = await desktop.page();
      await settled(page);
      return { desktop, page };
    },
    /** Ends those that run. */
    end: async (): Promise<void> => {
      for (const desktop of running.splice(0)) await desktop.end();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

export type Programs = ReturnType<typeof programs>;

export const heading = (page: Page, name: string) => page.getByRole('heading', { name });

/** Asks over the preload's bridge as a page would, with anything; gives the answer or error as text. */
export const askRaw = (page: Page, name: string, sent: unknown): Promise<string> =>
  page.evaluate(
    async ([asked, value]) => {
      const { ask } = (window as unknown as { afterfire: Bridge }).afterfire;
      return ask[asked as 'read-file'](value).then(
        (told) => JSON.stringify(told),
        (error: unknown) => String(error),
      );
    },
    [name, sent] as const,
  );
