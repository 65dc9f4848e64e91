import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, expect, test } from 'vitest';
import { CUT_SHORT, RUN_AGAIN, writtenRun } from '../builders/runs.ts';
import { overBothHosts } from './hosts.ts';
import { dropFiles, settled, textFile } from './window.ts';

const folder = mkdtempSync(join(tmpdir(), 'afterfire-runs-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const onDisk = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const second = onDisk('second.csv', writtenRun(RUN_AGAIN, 2));
const atOnce = onDisk('at-once.csv', writtenRun(RUN_AGAIN, 1));

overBothHosts((window) => {
  test('the log of a second run is taken with the first, shown with the hole, and parted', async () => {
    const { page, choose } = window();
    await dropFiles(page, [textFile('first.csv', writtenRun(CUT_SHORT, 1))]);
    await settled(page);
    const cone = await page.locator('.verdict .large').first().innerText();
    const ask = page.getByRole('button', { name: 'Join the second run’s log…' });
    await choose([second], () => ask.click());
    const part = page.getByRole('region', { name: 'Two logs of one load' });
    await part.getByText(/the first gave less than a thousandth/).waitFor();
    await page.getByRole('heading', { name: 'first.csv and second.csv' }).waitFor();
    await settled(page);
    expect(await page.locator('.verdict .large').first().innerText()).not.toBe(cone);
    await page.locator('.sheet-head', { hasText: /peak 1060/ }).waitFor();
    const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
    expect(violations).toEqual([]);

    // What is told goes on holding for both.
    await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
    expect(await page.locator('main').innerText()).not.toContain('°C');
    await part.getByRole('button', { name: 'Take them apart' }).click();
    await ask.waitFor();
    await page.getByRole('heading', { name: 'first.csv', exact: true }).waitFor();
    expect(await page.locator('.verdict .large').first().innerText()).toBe(cone);
  });

  test('a log that ran at the same time is refused, and the sheet stays as it was', async () => {
    const { page, choose } = window();
    await dropFiles(page, [textFile('first.csv', writtenRun(CUT_SHORT, 1))]);
    await settled(page);
    const verdict = await page.locator('.verdict').innerText();
    const ask = page.getByRole('button', { name: 'Join the second run’s log…' });
    await choose([atOnce], () => ask.click());
    await page.locator('.notice-problem', { hasText: 'ran at the same time' }).waitFor();
    await settled(page);
    expect(await page.locator('.verdict').innerText()).toBe(verdict);
    await ask.waitFor();
  });
});
