/**
 * Takes pictures of the built window. Without a folder, the one that the README shows; with one,
 * every screen and state at both sizes, light and dark, to be looked at:
 * `npm run build && npx tsx tests/tools/take-pictures.ts [FOLDER [STATE…]]`
 */
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { NamedFile } from '../../electron/host/handed-files.ts';
import { launchBrowser, openWindow, SAMPLES, settled } from '../e2e/window.ts';
import { PICTURE_STATES } from './picture-states.ts';

const README_FOLDER = join(import.meta.dirname, '..', '..', 'renderer', 'pictures');
const SAMPLE = 'underfired-glaze';
const README_FILES: readonly NamedFile[] = [
  { path: join(SAMPLES, `${SAMPLE}.txt`), role: 'unknown' },
  { path: join(SAMPLES, `${SAMPLE}.schedule.json`), role: 'schedule' },
];

const LARGE = { width: 1600, height: 1000 };
const SMALL = { width: 900, height: 600 };

interface Picture {
  readonly path: string;
  readonly viewport: typeof LARGE;
  readonly colorScheme: 'light' | 'dark';
  readonly begin?: readonly NamedFile[];
  readonly reach: (page: Page) => Promise<void>;
}

const take = async (browser: Browser, picture: Picture): Promise<void> => {
  const { path, viewport, colorScheme, begin, reach } = picture;
  const options = { viewport, colorScheme, reducedMotion: 'reduce' } as const;
  const { page, problems, close } = await openWindow(browser, options, begin);
  try {
    await reach(page);
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path, animations: 'disabled' });
    if (problems.length > 0) throw new Error(`${path}: ${problems.join('\n')}`);
  } finally {
    await close();
  }
};

const ofReadme: Picture = {
  path: join(README_FOLDER, 'sheet-light.png'),
  viewport: LARGE,
  colorScheme: 'light',
  begin: README_FILES,
  reach: settled,
};

const ofAll = (folder: string, wanted: readonly string[]): Picture[] =>
  PICTURE_STATES.filter(({ name }) => wanted.length === 0 || wanted.includes(name)).flatMap(
    ({ name, reach }) =>
      [SMALL, LARGE].flatMap((viewport) =>
        (['light', 'dark'] as const).map((colorScheme) => {
          const path = join(folder, `${name}-${viewport.width}-${colorScheme}.png`);
          return { path, viewport, colorScheme, reach };
        }),
      ),
  );

const [folder, ...wanted] = process.argv.slice(2);
mkdirSync(folder ?? README_FOLDER, { recursive: true });
const browser = await launchBrowser();
try {
  for (const picture of folder === undefined ? [ofReadme] : ofAll(folder, wanted)) {
    try {
      await take(browser, picture);
      console.log(`${picture.path}: ${Math.round(statSync(picture.path).size / 1024)} KB`);
    } catch (cause) {
      // The others are still worth looking at.
      process.exitCode = 1;
      console.error(`${picture.path} was not taken: ${String(cause)}`);
    }
  }
} finally {
  await browser.close();
}
