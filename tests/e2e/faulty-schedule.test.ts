import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { dropFiles, launchBrowser, openWindow, textFile } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

test('a faulty schedule is refused as a schedule, with its line, whatever its name', async () => {
  const { page, problems, close } = await openWindow(browser);
  await dropFiles(page, [textFile('mine.csv', 'rate_per_hour,target\n100,600\n60,hot\n')]);
  const notice = page.locator('.notice-problem');
  await notice.getByText('“mine.csv” could not be used, line 3').waitFor();
  expect(await page.getByRole('heading', { name: 'could not be read' }).count()).toBe(0);
  const json = '{\n"segments": [\n{"ratePerHour": 100, "target": 2300}]}';
  await dropFiles(page, [textFile('mine.json', json)]);
  await notice.getByText('“mine.json” could not be used, line 3').waitFor();
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  expect(await page.locator('.told-refused').textContent()).toContain('“mine.json”');
  expect(problems).toEqual([]);
  await close();
});
