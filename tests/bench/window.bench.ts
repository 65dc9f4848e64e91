import { launchBrowser } from '../e2e/window.ts';
import type { Bench } from './bench.ts';
import { dropTable } from './window/drop.ts';
import { framesTables } from './window/frames.ts';
import { memoryTable } from './window/memory.ts';

const bench: Bench = {
  name: 'window',
  run: async () => {
    const browser = await launchBrowser();
    try {
      return [
        await dropTable(browser),
        ...(await framesTables(browser)),
        await memoryTable(browser),
      ];
    } finally {
      await browser.close();
    }
  },
};

export default bench;
