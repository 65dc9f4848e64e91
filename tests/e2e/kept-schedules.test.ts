import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { dropFiles, launchBrowser, openWindow, sampleFile, settled, textFile } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

const scheduleFile = (name: string, ...rows: readonly string[]) =>
  textFile(
    `${name}.schedule.csv`,
    [`# name: ${name}`, 'rate_per_hour,target,hold_minutes', ...rows, ''].join('\n'),
  );

/** The sample's own but for one minute, so that it is no sample's and lies well on its log. */
const MINE = ['110,135,20', '175,1095,0', '60,1210,15'];

test('schedules are kept, offered where there is none, the best first, and forgotten', async () => {
  const { page, problems, strayRequests, close } = await openWindow(browser);
  await dropFiles(page, [scheduleFile('Decal of ours', '120,500,0', '200,760,15')]);
  await page.getByText('Schedule “Decal of ours” is ready').first().waitFor();
  await dropFiles(page, [scheduleFile('Glaze of ours', ...MINE)]);
  await page.getByText('Schedule “Glaze of ours” is ready').first().waitFor();

  // Another session, with what the host has kept.
  await page.reload();
  await page.locator('.empty-state').waitFor();
  await dropFiles(page, [sampleFile('good-glaze.csv')]);
  await settled(page);
  const fits = page.getByRole('list', { name: /schedules kept here/ });
  await fits.waitFor();
  const rows = await fits.getByRole('listitem').allTextContents();
  expect(rows[0]).toMatch(/^Glaze of ours \d+ %$/);
  expect(rows[1]).toMatch(/^Decal of ours \d+ %$/);
  // None is told before someone chooses.
  await page.getByText('No schedule to hold the curve against').waitFor();
  await fits.getByRole('button', { name: 'Glaze of ours' }).click();
  await page.getByRole('heading', { name: 'Planned and driven, leg by leg' }).waitFor();
  expect(await page.getByText('No schedule to hold the curve against').count()).toBe(0);

  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  await page.getByText('Schedules kept on this computer: 2').click();
  await page.getByRole('button', { name: 'Forget the schedule Decal of ours' }).click();
  await page.getByText('Schedules kept on this computer: 1').waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  await page.getByText('Schedules kept on this computer: 1').waitFor();
  expect([problems, strayRequests]).toEqual([[], []]);
  await close();
});

test('two schedules typed without a name are both kept', async () => {
  const { page, problems, close } = await openWindow(browser);
  await dropFiles(page, [sampleFile('good-glaze.csv')]);
  await settled(page);
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  const typeOne = async (button: string, target: string): Promise<void> => {
    await page.getByRole('button', { name: button, exact: true }).click();
    await page.getByLabel('Leg 1, rate').fill('100');
    await page.getByLabel('Leg 1, target').fill(target);
    await page.getByLabel('Leg 1, target').press('Tab');
    await page.getByText('The answer goes by this schedule.').waitFor();
  };
  await typeOne('Type one', '1000');
  await page.getByText('Schedules kept on this computer: 1').waitFor();
  await typeOne('Type a new one', '1200');
  await page.getByText('“My schedule 2” until it has one').waitFor();
  await page.getByText('Schedules kept on this computer: 2').click();
  for (const name of ['My schedule', 'My schedule 2']) {
    await page.getByRole('button', { name: `Forget the schedule ${name}`, exact: true }).waitFor();
  }
  expect(problems).toEqual([]);
  await close();
});
