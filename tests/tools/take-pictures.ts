/**
 * Takes the pictures that the README shows, from the built window on a sample:
 * `npm run build && npx tsx tests/tools/take-pictures.ts`
 */
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { launchBrowser, openWindow, SAMPLES, settled } from '../e2e/window.ts';

const FOLDER = join(import.meta.dirname, '..', '..', 'renderer', 'pictures');
const SAMPLE = 'underfired-glaze';
const VIEWPORT = { width: 1600, height: 1000 };

const FILES = [
  { path: join(SAMPLES, `${SAMPLE}.txt`), role: 'unknown' },
  { path: join(SAMPLES, `${SAMPLE}.schedule.json`), role: 'schedule' },
] as const;

const take = async (path: string): Promise<void> => {
  const browser = await launchBrowser();
  try {
    const { page, problems, close } = await openWindow(
      browser,
      { viewport: VIEWPORT, colorScheme: 'light', reducedMotion: 'reduce' },
      FILES,
    );
    await settled(page);
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path, animations: 'disabled' });
    await close();
    if (problems.length > 0) throw new Error(problems.join('\n'));
  } finally {
    await browser.close();
  }
};

mkdirSync(FOLDER, { recursive: true });
const path = join(FOLDER, 'sheet-light.png');
await take(path);
console.log(`${path}: ${Math.round(statSync(path).size / 1024)} KB`);
