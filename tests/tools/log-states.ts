import type { Page } from 'playwright-core';
import { dropFiles, settled, textFile } from '../e2e/window.ts';

/** A screen or a state of the window, and how a person comes to it from the window with nothing open. */
export interface PictureState {
  readonly name: string;
  readonly reach: (page: Page) => Promise<void>;
}

/** Presses the first button of that name. */
export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).first().click();

/** Days that may be months: the reader has to guess. */
export const AMBIGUOUS = [
  'when,a,b',
  ...Array.from({ length: 200 }, (_, i) => {
    const minute = String(i % 60).padStart(2, '0');
    const hour = String(Math.floor(i / 60)).padStart(2, '0');
    return `03/04/2026 ${hour}:${minute},${20 + i * 5},${21 + i * 5}`;
  }),
].join('\n');

/** Two firings of one kiln in one log, a cold day between them. */
const TWO_FIRINGS = [
  'time,temperature °C',
  ...[1060, 1222].flatMap((topC, day) =>
    Array.from({ length: 120 }, (_, i) => {
      const at = new Date(Date.UTC(2026, 2, 3 + 2 * day, 7, i * 10));
      return `${at.toISOString().slice(0, 16)},${Math.round(20 + (topC - 20) * Math.sin((i * Math.PI) / 119))}`;
    }),
  ),
].join('\n');

const openTwo = async (page: Page): Promise<void> => {
  await dropFiles(page, [textFile('march.csv', TWO_FIRINGS)]);
  await settled(page);
  await page.getByText('This log holds 2 firings').waitFor();
};

/** A correction that is kept as a rule. */
const keepRule = async (page: Page): Promise<void> => {
  await dropFiles(page, [textFile('guess.csv', AMBIGUOUS)]);
  await settled(page);
  await page
    .getByRole('button', { name: /Dates are written/ })
    .first()
    .click();
  await page.getByRole('option', { name: 'month, day, year' }).click();
  await page.getByText('Kept for files of this shape').waitFor();
};

const TYPED = [
  '8:00 20',
  '10:30 at 300, closed the lid',
  'turned up to high',
  '14:00 900 °C / 16:00 looked in',
  '17:40 1222',
].join('\n');

const typeIn = async (page: Page, text: string): Promise<void> => {
  await page.keyboard.press('i');
  await page.getByLabel('Times and temperatures').fill(text);
};

/** States of the window that come with certain logs, or with readings typed in. */
export const LOG_STATES: readonly PictureState[] = [
  { name: 'several-firings', reach: openTwo },
  {
    name: 'several-firings-desk',
    reach: async (page) => {
      await openTwo(page);
      await page.keyboard.press('d');
      await page.getByText('of another firing').first().waitFor();
    },
  },
  {
    name: 'reading-rules',
    reach: async (page) => {
      await keepRule(page);
      await press(page, /^View/);
      await page.getByRole('menuitem', { name: 'Reading rules…' }).click();
      await page.getByRole('dialog').waitFor();
    },
  },
  {
    name: 'typed-in',
    reach: async (page) => {
      await typeIn(page, TYPED);
      await page.getByText('4 readings').waitFor();
    },
  },
  {
    name: 'typed-in-begun',
    reach: async (page) => {
      await typeIn(page, 'glaze, top shelf\n8:00 68 F\nlate six 12 34 56\n');
      await page.getByText('more readings needed').waitFor();
    },
  },
  {
    name: 'typed-in-opened',
    reach: async (page) => {
      await typeIn(page, TYPED);
      await press(page, 'Open as a firing');
      await settled(page);
    },
  },
];
