import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  dropFiles,
  launchBrowser,
  openWindow,
  sampleFile,
  settled,
  textFile,
  type TestWindow,
} from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

const openSample = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name }).click();
  await settled(page);
};

/** From now on nothing is answered: what is shown meanwhile stays to be looked at. */
const holdAnalyses = (page: Page): Promise<void> =>
  page.evaluate(() => {
    Worker.prototype.postMessage = () => undefined;
  });

/** Two columns that may both be the kiln, and days that may be months: the reader has to guess. */
const AMBIGUOUS = [
  'when,a,b',
  ...Array.from({ length: 200 }, (_, i) => {
    const minute = String(i % 60).padStart(2, '0');
    const hour = String(Math.floor(i / 60)).padStart(2, '0');
    return `03/04/2026 ${hour}:${minute},${20 + i * 5},${21 + i * 5}`;
  }),
].join('\n');

interface State {
  readonly name: string;
  readonly reach: (page: Page) => Promise<void>;
}

const STATES: readonly State[] = [
  { name: 'nothing open', reach: async (page) => page.locator('.empty-state').waitFor() },
  { name: 'no finding', reach: (page) => openSample(page, 'good-bisque.csv') },
  { name: 'findings', reach: (page) => openSample(page, 'underfired-glaze.txt') },
  {
    name: 'a note open',
    reach: async (page) => {
      await openSample(page, 'underfired-glaze.txt');
      await page.locator('.note-head').nth(2).click();
      await page.locator('.note-open .note-body').waitFor();
    },
  },
  {
    name: 'no schedule',
    reach: async (page) => {
      await dropFiles(page, [sampleFile('power-cut.csv')]);
      await settled(page);
      await page.getByText('No schedule to hold the curve against').waitFor();
    },
  },
  {
    name: 'low certainty',
    reach: async (page) => {
      await dropFiles(page, [textFile('guess.csv', AMBIGUOUS)]);
      await settled(page);
      await page.getByText('What is not certain here').waitFor();
    },
  },
  {
    name: 'reading',
    reach: async (page) => {
      await holdAnalyses(page);
      await dropFiles(page, [sampleFile('power-cut.csv')]);
      await page.getByRole('progressbar', { name: 'Progress of the reading' }).waitFor();
    },
  },
  {
    name: 'working',
    reach: async (page) => {
      await openSample(page, 'overshoot.csv');
      await holdAnalyses(page);
      await dropFiles(page, [sampleFile('good-glaze.schedule.csv')]);
      await page.getByText('Working in what you told').waitFor();
    },
  },
  {
    name: 'refused',
    reach: async (page) => {
      await dropFiles(page, [textFile('empty.csv', 'time,temp\n')]);
      await page.getByRole('heading', { name: 'empty.csv could not be read' }).waitFor();
    },
  },
  {
    name: 'a schedule refused',
    reach: async (page) => {
      await dropFiles(page, [textFile('bad.schedule.json', '{"segments":[{"target":"hot"}]}')]);
      await page.locator('.notice-problem').waitFor();
    },
  },
  {
    name: 'telling',
    reach: async (page) => {
      await openSample(page, 'overshoot.csv');
      await page.getByRole('button', { name: 'Schedule and kiln' }).click();
      await page.locator('#told').waitFor();
    },
  },
  {
    name: 'the list of keys',
    reach: async (page) => {
      await page.keyboard.press('?');
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'a menu open',
    reach: async (page) => {
      await page.getByRole('button', { name: 'View' }).click();
      await page.getByRole('menu').waitFor();
    },
  },
];

const violationsOf = async ({ page }: TestWindow): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
};

describe.each(['light', 'dark'] as const)('every state, %s', (colorScheme) => {
  test.each(STATES)('$name has nothing that axe would mend', async ({ reach }) => {
    const window = await openWindow(browser, { colorScheme, reducedMotion: 'reduce' });
    await reach(window.page);
    expect(await violationsOf(window)).toEqual([]);
    expect(window.problems).toEqual([]);
    expect(window.strayRequests).toEqual([]);
    await window.close();
  });
});

describe('room', () => {
  const sizes = [
    { width: 900, height: 600, textPercent: 100 },
    { width: 900, height: 600, textPercent: 200 },
    { width: 1600, height: 1000, textPercent: 130 },
  ];

  test.each(sizes)('is enough at $width × $height with text at $textPercent %', async (size) => {
    const { width, height, textPercent } = size;
    const window = await openWindow(browser, { viewport: { width, height } });
    const { page } = window;
    await openSample(page, 'underfired-glaze.txt');
    await page.getByRole('button', { name: 'View' }).click();
    await page.getByRole('menuitem', { name: `Text at ${textPercent} %` }).click();
    const rootPx = await page.evaluate(() =>
      Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
    );
    expect(rootPx).toBeCloseTo((16 * textPercent) / 100, 1);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
    expect(window.problems).toEqual([]);
    await window.close();
  });
});
