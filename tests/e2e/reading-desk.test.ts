import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
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
let window_: TestWindow;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());
afterEach(async () => {
  expect(window_.problems).toEqual([]);
  expect(window_.strayRequests).toEqual([]);
  await window_.close();
});

const open = async (...options: Parameters<typeof openWindow>[1][]): Promise<void> => {
  window_ = await openWindow(browser, ...options);
  ({ page } = window_);
};

const pad = (value: number): string => String(value).padStart(2, '0');

/** Two columns that may both be the kiln, and days that may be months; one row is spoilt. */
const GUESSED = [
  'when,a,b',
  ...Array.from({ length: 200 }, (_, i) => {
    const stamp = `03/04/2026 ${pad(Math.floor(i / 60))}:${pad(i % 60)}`;
    return i === 30 ? `${stamp},oops,1` : `${stamp},${20 + i * 5},${26 + i * 4}`;
  }),
].join('\n');

/** A setpoint and nothing that was measured, as its name would have it. */
const REFUSED = [
  'Zeit;Sollwert',
  ...Array.from({ length: 60 }, (_, i) => `2026-03-01 10:${pad(i)};${20 + i * 10},5`),
].join('\n');

const desk = () => page.locator('#desk');
const readSo = async (name: string): Promise<void> => {
  await page.locator('#desk[aria-busy="false"]').waitFor();
  await desk().locator('p, figcaption').filter({ hasText: name }).first().waitFor();
};
const choose = async (label: string | RegExp, option: string): Promise<void> => {
  await desk().getByRole('button', { name: label }).click();
  await page.getByRole('option', { name: option, exact: true }).click();
};
const verdict = (): Promise<string> => page.locator('.verdict').innerText();

describe('the desk', () => {
  test('opens by itself where something is a guess, with lines, columns and curve', async () => {
    await open();
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    const lines = desk().getByRole('table', { name: /line by line: 201 lines/ });
    await lines.waitFor();
    const first = lines.getByRole('row').nth(2);
    expect(await first.innerText()).toMatch(/2\s+03\/04\/2026 00:00,20,26\s+0:00:00\s+20 °C/);
    expect(await desk().locator('.desk-plot title').textContent()).toContain('2026-04-03 00:00');
    expect(await desk().getByText('◇ a guess').count()).toBe(2);
    await desk().locator('.pick-one', { hasText: 'rejected rows (1)' }).click();
    expect(await lines.getByRole('row').nth(1).innerText()).toContain('rejected');
  });

  test('stays away where all is sure; one click or one key opens it, another closes it', async () => {
    await open();
    await dropFiles(page, [sampleFile('power-cut.csv')]);
    await settled(page);
    expect(await desk().count()).toBe(0);
    await page.getByRole('button', { name: 'How it was read' }).click();
    await desk()
      .getByRole('table', { name: /line by line/ })
      .waitFor();
    await desk().getByRole('button', { name: 'Close the desk' }).click();
    expect(await desk().count()).toBe(0);
    await page.keyboard.press('d');
    await desk()
      .getByRole('table', { name: /line by line/ })
      .waitFor();
    expect(await page.locator('#desk-title').evaluate((it) => it === document.activeElement)).toBe(
      true,
    );
    await page.keyboard.press('Escape');
    expect(await desk().count()).toBe(0);
  });

  test('shows at once what a decision changes, and takes it back', async () => {
    await open();
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    await choose(/Dates are written/, 'month, day, year');
    await readSo('It began 2026-03-04 00:00');
    await choose(/b is taken for/, 'the kiln’s temperature');
    await readSo('the kiln’s temperature from “b”');
    expect(await verdict()).toMatch(/822\s°C/);
    await choose(/Readings are in/, 'Degrees Fahrenheit');
    await readSo('in degrees Fahrenheit');
    await choose(/Readings are in/, 'as the file says');
    await readSo('in degrees Celsius');
    await desk().getByRole('button', { name: 'read all of it as the file says' }).click();
    await readSo('the kiln’s temperature from “a”');
    await readSo('It began 2026-04-03 00:00');
  });

  test('says why a change cannot be, keeps the sheet, and takes it back', async () => {
    await open();
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    const before = await verdict();
    await choose(/Cells are parted by/, 'Tabs');
    await desk().getByText('So it cannot be read').waitFor();
    expect(await verdict()).toBe(before);
    await desk().getByRole('button', { name: 'Take it back' }).click();
    await desk().getByText('So it cannot be read').waitFor({ state: 'detached' });
    expect(
      await desk()
        .getByRole('button', { name: /Cells are parted by/ })
        .innerText(),
    ).toContain('commas (as read)');
  });

  test('speaks in the window’s unit', async () => {
    await open();
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    await desk()
      .getByRole('table', { name: /line by line/ })
      .waitFor();
    await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
    const row = desk().locator('.desk-lines').getByRole('row').nth(2);
    expect(await row.innerText()).toContain('68 °F');
  });
});

describe('a refused log', () => {
  test('is read after all by the keyboard alone, and the focus stays with the control', async () => {
    await open();
    await dropFiles(page, [textFile('refused.csv', REFUSED)]);
    await page.getByRole('heading', { name: 'refused.csv could not be read' }).waitFor();
    await desk()
      .getByRole('button', { name: /Sollwert is taken for/ })
      .press('Enter');
    await page.getByRole('option', { name: 'the kiln’s temperature' }).press('Enter');
    await settled(page);
    await desk().locator('.desk-plot').waitFor();
    expect(await desk().innerText()).toContain('60 rows read, all kept');
    const focused = () =>
      page.evaluate(
        () => document.activeElement?.closest('.field')?.querySelector('.unseen')?.textContent,
      );
    await expect.poll(focused).toBe('Sollwert is taken for');
  });
});

describe('looks', () => {
  test.each(['light', 'dark'] as const)('have nothing that axe would mend, %s', async (scheme) => {
    await open({ colorScheme: scheme, reducedMotion: 'reduce' });
    const violations = async () => {
      const found = await new AxeBuilder({ page }).analyze();
      return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
    };
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    await desk().getByRole('button', { name: 'every decision' }).click();
    expect(await violations()).toEqual([]);
    await dropFiles(page, [textFile('refused.csv', REFUSED)]);
    await page.getByRole('heading', { name: 'refused.csv could not be read' }).waitFor();
    expect(await violations()).toEqual([]);
  });

  test.each([100, 200])('fit 900 × 600 with text at %d percent', async (textPercent) => {
    await open({ viewport: { width: 900, height: 600 } });
    await page.getByRole('button', { name: 'View' }).click();
    await page.getByRole('menuitem', { name: `Text at ${textPercent} %` }).click();
    await dropFiles(page, [textFile('guess.csv', GUESSED)]);
    await settled(page);
    await desk()
      .getByRole('table', { name: /line by line/ })
      .waitFor();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
  });
});
