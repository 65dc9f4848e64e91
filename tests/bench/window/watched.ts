import type { Browser, Page } from 'playwright-core';
import { openWindow } from '../../e2e/window.ts';

/** Notes when the worker is asked, when it answers and when each stage begins, without changing it. */
const watchWorkers = async (page: Page): Promise<void> => {
  // The runner marks functions with names by a helper of its own, which a page does not have.
  await page.addInitScript('globalThis.__name ??= (named) => named');
  await page.addInitScript(() => {
    const seen: [string, number][] = [];
    Object.assign(window, { seen });
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        this.addEventListener(
          'message',
          ({ data }: MessageEvent<{ kind: string; stage?: string }>) =>
            seen.push([data.stage ?? data.kind, performance.now()]),
        );
      }

      override postMessage(message: unknown): void {
        seen.push(['asked', performance.now()]);
        super.postMessage(message);
      }
    };
  });
};

/** How long each part took, ms, and when the worker was asked and answered. */
export interface GivenTimes {
  readonly toBytes: number;
  readonly reading: number;
  readonly judging: number;
  readonly drawing: number;
  readonly all: number;
  readonly givenAt: number;
  readonly askedAt: number;
  readonly answeredAt: number;
}

/** From when files are given to the frame in which the verdict and the curve have been drawn. */
export const timeGiven = async (page: Page, give: () => Promise<void>): Promise<GivenTimes> => {
  await page.evaluate(() => {
    const state = window as unknown as { seen: [string, number][]; drawn: Promise<number> };
    state.seen.length = 0;
    const before = document.querySelector('.sheet');
    state.drawn = new Promise((resolve) => {
      // Dropped files are given with the event; chosen ones from here on.
      state.seen.push(['given', performance.now()]);
      addEventListener('drop', () => (state.seen[0] = ['given', performance.now()]), {
        capture: true,
        once: true,
      });
      const look = () => {
        const sheet = document.querySelector('.sheet');
        const isDrawn =
          sheet !== null && sheet !== before && sheet.querySelector('canvas') !== null;
        // The frame after the one in which it was put on the page has been painted.
        if (isDrawn) requestAnimationFrame(() => resolve(performance.now()));
        else requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    });
  });
  await give();
  return page.evaluate(async () => {
    const state = window as unknown as { seen: [string, number][]; drawn: Promise<number> };
    const drawn = await state.drawn;
    const at = (what: string): number => state.seen.find(([name]) => name === what)?.[1] ?? NaN;
    return {
      toBytes: at('asked') - at('given'),
      reading: at('judging') - at('asked'),
      judging: at('answered') - at('judging'),
      drawing: drawn - at('answered'),
      all: drawn - at('given'),
      givenAt: at('given'),
      askedAt: at('asked'),
      answeredAt: at('answered'),
    };
  });
};

/** The window on a wide screen, its workers watched. */
export const openWatched = async (browser: Browser) => {
  const window = await openWindow(browser, { viewport: { width: 1600, height: 1000 } });
  await watchWorkers(window.page);
  await window.page.reload();
  await window.page.locator('.bar').waitFor();
  return window;
};
