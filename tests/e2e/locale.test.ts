import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openWindow } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

test('the machine’s language changes neither numbers nor words', async () => {
  const { page, problems, close } = await openWindow(browser, { locale: 'de-DE' });
  expect(await page.evaluate(() => navigator.language)).toBe('de-DE');
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();

  // The controls' library says “Schließen” to screen readers where it follows the machine.
  await page.locator('.told-parts .choice-button').first().click();
  await page.getByRole('listbox').waitFor();
  const dismiss = await page
    .locator('[data-trigger] button, .choice-list button')
    .evaluateAll((buttons) => buttons.map((button) => button.getAttribute('aria-label')));
  expect(dismiss.length).toBeGreaterThan(0);
  expect(new Set(dismiss)).toEqual(new Set(['Dismiss']));
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Type one' }).click();
  await page.getByLabel('Leg 1, rate').fill('1234.5');
  await page.getByLabel('Leg 1, target').fill('1000');
  await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
  expect(await page.getByLabel('Leg 1, rate').inputValue()).toBe('2222.1');
  expect(await page.getByLabel('Leg 1, target').inputValue()).toBe('1832');
  expect(problems).toEqual([]);
  await close();
});
