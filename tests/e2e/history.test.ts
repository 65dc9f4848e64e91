import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { wornKilnLogs } from '../builders/kiln-history.ts';
import { HARD_GLAZE } from '../kiln/schedules.ts';
import { overBothHosts } from './hosts.ts';
import { dropFiles, sampleFile, settled, textFile } from './window.ts';

const FIRINGS = 8;
const SCHEDULE = textFile('hard.schedule.json', JSON.stringify(HARD_GLAZE));
const logs = wornKilnLogs(FIRINGS, 0.13).map(({ name, text }) => textFile(name, text));

const told = (page: Page) => page.locator('.history').waitFor();
const dropped = async (page: Page): Promise<void> => {
  await dropFiles(page, [...logs, SCHEDULE]);
  await told(page);
};
const rowsOf = (page: Page) => page.locator('.firings-table tbody tr');
const powerOf = async (page: Page, row: number): Promise<number> =>
  Number.parseFloat(await rowsOf(page).nth(row).locator('td').nth(5).innerText());

overBothHosts((window) => {
  test('several logs dropped together are one kiln’s history, its wear told with a forecast', async () => {
    const { page } = window();
    await dropped(page);
    await page.getByRole('heading', { name: `over ${FIRINGS} firings` }).waitFor();
    expect(await rowsOf(page).count()).toBe(FIRINGS);
    // The last firing had 1/1.13 of the first one's power.
    const share = (await powerOf(page, FIRINGS - 1)) / (await powerOf(page, 0));
    expect(share).toBeGreaterThan(0.85);
    expect(share).toBeLessThan(0.92);
    const verdict = page.getByRole('region', { name: 'Verdict' });
    await verdict.getByText(/The power has fallen to \d+\s%/).waitFor();
    await verdict.getByText(/About\s\d+\sfirings are left .*80\s%\srange/).waitFor();
    expect(await page.locator('.history-firing circle').count()).toBe(FIRINGS);
    expect(await page.locator('.history-cone').count()).toBe(FIRINGS);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
      expect(violations).toEqual([]);
    }
  });

  test('a finding opens with its caution and marks its firings; all changes to °F at once', async () => {
    const { page } = window();
    await dropped(page);
    await page.getByRole('button', { name: /The power has fallen/ }).press('Enter');
    await page.getByText('What else it could be').waitFor();
    await page.locator('.note-body .caution').waitFor();
    expect(await page.locator('.firings-table .history-marked').count()).toBeGreaterThan(3);
    await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
    const text = await page.locator('main').innerText();
    expect(text).toContain('°F');
    expect(text).not.toContain('°C');
  });

  test('a firing opens on its own sheet; what is told there comes back with it', async () => {
    const { page } = window();
    await dropped(page);
    await page.getByRole('button', { name: 'firing-03.csv', exact: true }).click();
    await settled(page);
    await page.getByRole('heading', { name: 'firing-03.csv' }).waitFor();
    await page.locator('.sheet-head', { hasText: `schedule “${HARD_GLAZE.name}”` }).waitFor();
    await page.getByRole('button', { name: 'Schedule and kiln' }).click();
    await page.getByRole('button', { name: `History of ${FIRINGS}` }).click();
    await told(page);
    // Told in the panel, it holds for all firings.
    await page.getByRole('button', { name: 'take the schedule away' }).click();
    await page.getByText('No schedule told').waitFor();
    await told(page);
    await page.getByRole('button', { name: 'Leave firing-08.csv out' }).click();
    await page.getByRole('heading', { name: `over ${FIRINGS - 1} firings` }).waitFor();
    await page.getByRole('button', { name: 'Close the history' }).click();
    await page.locator('.empty-state').waitFor();
  });

  test('the same log is counted once; cones beside one load are not asked of all', async () => {
    const { page } = window();
    await dropped(page);
    await dropFiles(page, [...logs, ...logs.slice(0, 2)]);
    await page.getByText('this is the same log as another one here').first().waitFor();
    await told(page);
    await page.getByRole('heading', { name: `over ${FIRINGS} firings` }).waitFor();
    await page.getByRole('button', { name: 'Schedule and kiln' }).click();
    expect(await page.getByText('Add a cone that was seen').count()).toBe(0);
  });

  test('nothing of a history’s schedule is held against a log that is dropped on it', async () => {
    const { page } = window();
    await dropped(page);
    await dropFiles(page, [sampleFile('decal.txt')]);
    await settled(page);
    await page.getByText('No schedule to hold the curve against').waitFor();
    await dropFiles(page, [textFile('bad.csv', 'nothing\n'), textFile('worse.csv', 'here\n')]);
    await page.getByRole('heading', { name: 'None of these logs could be read' }).waitFor();
  });

  test('what cannot be read is named and left out; the text can be copied', async () => {
    const { page } = window();
    await dropFiles(page, [...logs.slice(0, 2), textFile('bad.csv', 'nothing here\n')]);
    await told(page);
    await page.getByText(/“bad\.csv”, line 1: /).waitFor();
    await page
      .getByText(/not yet to be told/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await page.getByText('The history is on the clipboard.').waitFor();
    await page.getByRole('button', { name: 'Leave it out' }).click();
    await page.getByText(/“bad\.csv”/).waitFor({ state: 'detached' });
    // One log alone is a firing again, and the history stays at hand.
    await dropFiles(page, [sampleFile('good-glaze.csv')]);
    await settled(page);
    await page.getByRole('button', { name: 'History of 2' }).click();
    await told(page);
  });
});
