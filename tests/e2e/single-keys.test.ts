import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openWindow } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

test('single keys stay switched off in the next session', async () => {
  const { page, problems, close } = await openWindow(browser);
  await page.keyboard.press('?');
  const single = page.getByRole('dialog').getByRole('checkbox', { name: 'Single keys do things' });
  await single.uncheck();
  await page.reload();
  await page.locator('.bar').waitFor();
  await page.keyboard.press('t');
  expect(await page.locator('#told').count()).toBe(0);
  await page.getByRole('button', { name: 'Keys' }).click();
  expect(await single.isChecked()).toBe(false);
  await single.check();
  await page.keyboard.press('Escape');
  await page.keyboard.press('t');
  await page.locator('#told').waitFor();
  expect(problems).toEqual([]);
  await close();
});
