import type { Page } from 'playwright-core';
import { wornKilnLogs } from '../builders/kiln-history.ts';
import { HARD_GLAZE } from '../kiln/schedules.ts';
import { AMBIGUOUS, LOG_STATES, press, type PictureState } from './log-states.ts';
import { dropFiles, sampleFile, settled, textFile } from '../e2e/window.ts';

const openSample = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name }).click();
  await settled(page);
};

const TROUBLED = 'underfired-glaze.txt';
const withSample =
  (next: (page: Page) => Promise<void>, sample = TROUBLED) =>
  async (page: Page): Promise<void> => {
    await openSample(page, sample);
    await next(page);
  };

const tell = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  await page.locator('#told').waitFor();
};

/** From now on nothing is answered: what is shown meanwhile stays to be looked at. */
const holdAnalyses = (page: Page): Promise<void> =>
  page.evaluate(() => {
    Worker.prototype.postMessage = () => undefined;
  });

const scrollTo =
  (selector: string) =>
  async (page: Page): Promise<void> => {
    await page.locator(selector).evaluate((part) => part.scrollIntoView({ block: 'start' }));
  };

const schedule = (name: string, rows: string) =>
  textFile(`${name}.csv`, `# name: ${name}\nrate_per_hour,target,hold_minutes\n${rows}\n`);

const keptOnes = async (page: Page): Promise<void> => {
  for (const one of [
    schedule('Decal, slow', '120,500,0\n200,760,15'),
    schedule('Glaze with a long hold', '110,135,20\n175,1095,0\n60,1210,25'),
  ]) {
    await dropFiles(page, [one]);
    await page.getByText('is ready').first().waitFor();
  }
};

const noSchedule = async (page: Page): Promise<void> => {
  await dropFiles(page, [sampleFile('good-glaze.csv')]);
  await settled(page);
};

const seeCones = async (page: Page): Promise<void> => {
  await tell(page);
  for (const [place, presses] of [
    ['top shelf', 4],
    ['bottom shelf', 5],
  ] as const) {
    await press(page, 'Add a cone that was seen');
    await page.getByLabel('Where it stood').last().fill(place);
    const slider = page.getByRole('slider', { name: /How far down/ }).last();
    for (let count = 0; count < presses; count++) await slider.press('PageUp');
    await press(page, 'Add this cone');
  }
  await settled(page);
};

/** Every screen and state that `screen.md` names, and each part of the sheet and of the panel. */
export const PICTURE_STATES: readonly PictureState[] = [
  { name: 'empty', reach: async (page) => page.locator('.empty-state').waitFor() },
  { name: 'sheet', reach: (page) => openSample(page, TROUBLED) },
  { name: 'sheet-no-finding', reach: (page) => openSample(page, 'good-bisque.csv') },
  { name: 'sheet-two-places', reach: (page) => openSample(page, 'slow-cooled-glaze.csv') },
  {
    name: 'finding-open',
    reach: withSample(async (page) => {
      await page.locator('.note-head').nth(1).click();
      await page.locator('.note-open .note-body').waitFor();
    }),
  },
  {
    name: 'zoomed',
    reach: withSample(async (page) => {
      await page.keyboard.press('c');
      for (let count = 0; count < 3; count++) await page.keyboard.press('+');
    }),
  },
  { name: 'heat-work', reach: withSample(scrollTo('#heat-work')) },
  { name: 'legs', reach: withSample(scrollTo('#legs')) },
  { name: 'power', reach: withSample(scrollTo('#power')) },
  { name: 'reading', reach: withSample(scrollTo('#reading')) },
  { name: 'cautions', reach: withSample(scrollTo('#cautions')) },
  {
    name: 'low-certainty',
    reach: async (page) => {
      await dropFiles(page, [textFile('guess.csv', AMBIGUOUS)]);
      await settled(page);
    },
  },
  { name: 'no-schedule', reach: noSchedule },
  {
    name: 'no-schedule-kept',
    reach: async (page) => {
      await keptOnes(page);
      await page.reload();
      await page.locator('.empty-state').waitFor();
      await noSchedule(page);
      await page.locator('.fits').waitFor();
      await page.locator('.fits').scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'being-read',
    reach: async (page) => {
      await holdAnalyses(page);
      await dropFiles(page, [sampleFile('power-cut.csv')]);
      await page.getByRole('progressbar').waitFor();
    },
  },
  {
    name: 'working',
    reach: withSample(async (page) => {
      await holdAnalyses(page);
      await dropFiles(page, [sampleFile('good-glaze.schedule.csv')]);
      await page.getByText('Working in what you told').waitFor();
    }),
  },
  {
    name: 'refused',
    reach: async (page) => {
      await dropFiles(page, [textFile('empty.csv', 'time,temp\n')]);
      await page.getByRole('heading', { name: 'could not be read' }).waitFor();
    },
  },
  {
    name: 'schedule-refused',
    reach: async (page) => {
      await dropFiles(page, [textFile('mine.csv', 'rate_per_hour,target\n100,600\n60,hot\n')]);
      await page.locator('.notice-problem').waitFor();
      await tell(page);
    },
  },
  {
    name: 'notice-said',
    reach: withSample(async (page) => {
      await page.keyboard.press('v');
      await page.locator('.notice-said').waitFor();
    }),
  },
  { name: 'telling', reach: withSample(tell) },
  {
    name: 'telling-none',
    reach: async (page) => {
      await noSchedule(page);
      await tell(page);
    },
  },
  {
    name: 'telling-choose',
    reach: async (page) => {
      await keptOnes(page);
      await tell(page);
      await press(page, /^Choose/);
      await page.getByRole('menu').waitFor();
    },
  },
  {
    name: 'telling-kept',
    reach: async (page) => {
      await keptOnes(page);
      await tell(page);
      await page.getByText('Schedules kept on this computer').click();
    },
  },
  {
    name: 'telling-typed',
    reach: async (page) => {
      await noSchedule(page);
      await tell(page);
      await press(page, 'Type one');
      await page.getByLabel('Leg 1, rate').fill('100');
      await page.getByLabel('Leg 1, target').fill('1000');
      await press(page, 'Add a leg');
      await page.getByLabel('Leg 2, rate').fill('60');
      await page.getByLabel('Leg 2, target').fill('2200');
    },
  },
  {
    name: 'telling-from-cone',
    reach: async (page) => {
      await noSchedule(page);
      await tell(page);
      await press(page, 'Make one from a cone');
      await page.getByLabel('Hold at the top').fill('15');
    },
  },
  {
    name: 'telling-cones',
    reach: withSample(async (page) => {
      await seeCones(page);
      await page.getByText('Witness cones seen').scrollIntoViewIfNeeded();
    }),
  },
  {
    name: 'cones-seen',
    reach: withSample(async (page) => {
      await seeCones(page);
      await page.keyboard.press('Escape');
      await tell(page).catch(() => undefined);
      await page.locator('.telling-close').click();
      await scrollTo('#heat-work')(page);
    }),
  },
  ...LOG_STATES,
  {
    name: 'keys',
    reach: async (page) => {
      await page.keyboard.press('?');
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'about',
    reach: async (page) => {
      await press(page, /^View/);
      await page.getByRole('menuitem', { name: /About/ }).click();
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'menu-save',
    reach: withSample(async (page) => {
      await press(page, /^Save/);
      await page.getByRole('menu').waitFor();
    }),
  },
  {
    name: 'history',
    reach: async (page) => {
      const logs = wornKilnLogs(9, 0.13).map(({ name, text }) => textFile(name, text));
      const plan = textFile('hard.schedule.json', JSON.stringify(HARD_GLAZE));
      await dropFiles(page, [...logs, plan, textFile('not-a-log.csv', 'nothing here\n')]);
      await page.locator('.history').waitFor();
    },
  },
  {
    name: 'menu-view',
    reach: withSample(async (page) => {
      await press(page, /^View/);
      await page.getByRole('menu').waitFor();
    }),
  },
];
