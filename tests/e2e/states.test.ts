import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { LOG_STATES, type PictureState } from '../tools/log-states.ts';
import { overBothHosts } from './hosts.ts';
import { trySample } from './sheet.ts';
import { dropFiles, sampleFile, settled, textFile } from './window.ts';

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

const STATES: readonly PictureState[] = [
  ...LOG_STATES,
  { name: 'nothing open', reach: async (page) => page.locator('.empty-state').waitFor() },
  { name: 'no finding', reach: (page) => trySample(page, 'good-bisque.csv') },
  { name: 'findings', reach: (page) => trySample(page, 'underfired-glaze.txt') },
  {
    name: 'a note open',
    reach: async (page) => {
      await trySample(page, 'underfired-glaze.txt');
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
      await trySample(page, 'overshoot.csv');
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
      await trySample(page, 'overshoot.csv');
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

const violationsOf = async (page: Page): Promise<string[]> => {
  // In its own mode axe opens a page beside this one, which the main process refuses.
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
};

overBothHosts(
  (window) => {
    test.each(STATES)(
      '$name is drawn, and axe would mend nothing, light or dark',
      async (state) => {
        const { page } = window();
        await state.reach(page);
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          const paper = await page
            .locator('html')
            .evaluate((it) => /\d+/.exec(getComputedStyle(it).backgroundColor)?.[0]);
          expect(Number(paper) > 128 ? 'light' : 'dark').toBe(colorScheme);
          expect(await violationsOf(page)).toEqual([]);
        }
      },
    );

    test('axe would see it if there were something to mend', async () => {
      const { page } = window();
      await trySample(page, 'good-bisque.csv');
      await page.evaluate(() => {
        document.querySelector('.bar')?.append(document.createElement('button'));
      });
      expect((await violationsOf(page)).join()).toContain('button-name');
    });
  },
  { context: { colorScheme: 'light', reducedMotion: 'reduce' } },
);
