import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { dropFiles, settled, textFile } from './window.ts';

/** A log of one shape; of its two columns the reader takes the hotter one for the kiln. */
const logOf = (topC: number) =>
  [
    'minutes,a,b',
    ...Array.from({ length: 300 }, (_, i) => `${i},${20 + i},${20 + (i * (topC - 20)) / 299}`),
    '',
  ].join('\n');

const desk = (page: Page) => page.locator('#desk');
const openLog = async (page: Page, name: string, topC: number): Promise<void> => {
  await dropFiles(page, [textFile(name, logOf(topC))]);
  await page.getByRole('heading', { name }).waitFor();
  await settled(page);
};

overBothHosts((window) => {
  test('a correction is kept for files of its shape, used and said, named, and forgotten', async () => {
    const { page } = window();
    await openLog(page, 'first.csv', 900);
    await desk(page)
      .getByRole('button', { name: /a is taken for/ })
      .click();
    await page.getByRole('option', { name: 'the kiln’s temperature' }).click();
    await desk(page).getByText('Kept for files of this shape as “like first.csv”').waitFor();

    // Another session, with what the host has kept.
    await page.reload();
    await page.locator('.empty-state').waitFor();
    await openLog(page, 'second.csv', 1000);
    await page.getByText('Read by your rule “like first.csv”').waitFor();
    expect(await page.locator('.sheet-head').innerText()).toMatch(/peak 319\s°C/);
    expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations).toEqual([]);

    await page.getByRole('button', { name: 'Read it without' }).click();
    await page.getByText('Read by your rule').waitFor({ state: 'detached' });
    await page.locator('.sheet-head', { hasText: 'peak 1000' }).waitFor();

    await page.getByRole('button', { name: 'View' }).click();
    await page.getByRole('menuitem', { name: 'Reading rules…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Reading rules' });
    await dialog.getByText('The kiln’s temperature from “a”').waitFor();
    await dialog.getByRole('textbox', { name: 'Name' }).fill('two couples');
    await dialog.getByRole('button', { name: 'Forget “two couples”' }).waitFor();
    expect((await new AxeBuilder({ page }).setLegacyMode().analyze()).violations).toEqual([]);
    await page.keyboard.press('Escape');
    await openLog(page, 'third.csv', 1100);
    await page.getByText('Read by your rule “two couples”').waitFor();

    await page.getByRole('button', { name: 'View' }).click();
    await page.getByRole('menuitem', { name: 'Reading rules…' }).click();
    await dialog.getByRole('button', { name: 'Forget “two couples”' }).click();
    await dialog.getByText('None yet').waitFor();
    await page.keyboard.press('Escape');
    await page.reload();
    await page.locator('.empty-state').waitFor();
    await openLog(page, 'fourth.csv', 1000);
    expect(await page.getByText('Read by your rule').count()).toBe(0);
  });
});
