import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openWindow } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

/** Closes the panel and opens it again. */
const reopen = async (page: Page): Promise<void> => {
  const opener = page.getByRole('button', { name: 'Schedule and kiln' });
  await opener.click();
  await page.locator('#told').waitFor({ state: 'detached' });
  await opener.click();
  await page.locator('#told').waitFor();
};

test('what was begun in the panel is still there when it is opened again', async () => {
  const { page, problems, close } = await openWindow(browser);
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  await page.getByRole('button', { name: 'Type one' }).click();
  await page.getByLabel('Leg 1, rate').fill('85');
  await page.getByRole('button', { name: 'Make one from a cone' }).click();
  await page.getByLabel('Rate of the last climb').fill('45');
  await page.getByRole('button', { name: 'Add a cone that was seen' }).click();
  await page.getByLabel('Where it stood').fill('top shelf');
  await page.getByLabel('Where it stood').press('Tab');
  await reopen(page);
  expect(await page.getByLabel('Leg 1, rate').inputValue()).toBe('85');
  expect(await page.getByLabel('Rate of the last climb').inputValue()).toBe('45');
  expect(await page.getByLabel('Where it stood').inputValue()).toBe('top shelf');

  // Given up, it is gone.
  await page.getByRole('button', { name: 'leave it' }).first().click();
  await page.getByRole('button', { name: 'leave it' }).click();
  await page.getByRole('button', { name: 'take the schedule away' }).click();
  await reopen(page);
  expect(await page.getByLabel('Leg 1, rate').count()).toBe(0);
  expect(await page.getByLabel('Rate of the last climb').count()).toBe(0);
  expect(await page.getByLabel('Where it stood').count()).toBe(0);
  expect(problems).toEqual([]);
  await close();
});
