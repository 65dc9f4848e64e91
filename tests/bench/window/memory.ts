import type { Browser, Page } from 'playwright-core';
import { dropFiles, openWindow, sampleFile, settled } from '../../e2e/window.ts';
import type { Table } from '../bench.ts';

const FIRINGS = 200;
const FIRINGS_A_ROW = 50;

interface Memory {
  readonly heapMB: number;
  readonly allMB: number;
}

const memoryOf = async (page: Page): Promise<Memory> => {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  // Counts the worker too; the page is isolated from others, so the browser will tell.
  const bytes = await page.evaluate(async () => {
    const measured = performance as unknown as {
      measureUserAgentSpecificMemory?: () => Promise<{ bytes: number }>;
    };
    return (await measured.measureUserAgentSpecificMemory?.())?.bytes ?? NaN;
  });
  return { heapMB: usedSize / 1e6, allMB: bytes / 1e6 };
};

/** Whether memory stays flat while one firing is opened after the other. */
export const memoryTable = async (browser: Browser): Promise<Table> => {
  const window = await openWindow(browser, { reducedMotion: 'reduce' });
  const { page } = window;
  const firings = ['overshoot', 'failing-couple'].map((stem) => [
    sampleFile(`${stem}.csv`),
    sampleFile(`${stem}.schedule.json`),
  ]);
  const rows: (string | number)[][] = [];
  for (let opened = 0; opened <= FIRINGS; opened++) {
    if (opened > 0 && (opened === 10 || opened % FIRINGS_A_ROW === 0)) {
      const { heapMB, allMB } = await memoryOf(page);
      rows.push([opened, heapMB, allMB]);
    }
    const files = firings[opened % firings.length] ?? [];
    await dropFiles(page, files);
    await page.getByRole('heading', { name: files[0]?.name ?? '', level: 1 }).waitFor();
    await settled(page);
  }
  await window.close();
  return {
    title: `Memory while ${FIRINGS} firings are opened one after the other, MB`,
    columns: ['firings opened', "the page's heap", 'page and worker'],
    rows,
    notes: ['After garbage has been collected.'],
  };
};
