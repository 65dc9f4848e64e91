import { writeFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { pickFrom, tell } from './sheet.ts';
import { dropFiles, settled, textFile } from './window.ts';

const TYPED = '8:00 68\n11:00 1112 lid closed\n17:40 2232';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Type readings in' });
const box = (page: Page) => dialog(page).getByLabel('Times and temperatures');
const press = (page: Page, name: string) =>
  dialog(page).getByRole('button', { name, exact: true }).click();
const head = (page: Page) => page.locator('.sheet-head').innerText();

overBothHosts((window) => {
  test('readings are typed in, told line by line, opened, and put right afterwards', async () => {
    const { page } = window();
    await page.keyboard.press('i');
    await dialog(page).getByText('No reading yet; at least 3 are needed.').waitFor();
    const open = dialog(page).getByRole('button', { name: 'Open as a firing' });
    expect(await open.isDisabled()).toBe(true);
    expect(await box(page).evaluate((it) => it === document.activeElement)).toBe(true);

    await box(page).pressSequentially('8:00 68\n9:00 12 34 56\n');
    await dialog(page).getByText('1 reading; 1 rejected; 2 more readings needed.').waitFor();
    const rows = dialog(page).getByRole('table', { name: 'What was typed' }).getByRole('row');
    await rows.filter({ hasText: /2.*9:00 12 34 56.*▲ rejected: no time/ }).waitFor();

    await box(page).fill(TYPED);
    await dialog(page).getByText('3 readings.').waitFor();
    await dialog(page).locator('.pick-one', { hasText: '°F' }).click();
    await rows.filter({ hasText: /17:40 2232 °F.*9:40:00\s+1222.2 °C/ }).waitFor();
    expect(await dialog(page).locator('.small-curve-dot').count()).toBe(3);
    await open.click();
    await settled(page);
    expect(await head(page)).toMatch(
      /Typed in at \d+h\d\d[\s\S]*9 h 40 min logged · peak 1222\s°C/,
    );
    // What so few readings cannot tell stands on the sheet.
    expect(await page.locator('.verdict').innerText()).toContain('a reading only every');
    expect(await page.locator('#reading').innerText()).toContain('readings typed in by hand');

    // A cone that is told stays with the firing when a reading is put right.
    const told = (await tell(page)).getByRole('region', { name: 'What was meant' });
    await pickFrom(told, /Cone$/, 'cone 6');
    await page.locator('.verdict', { hasText: 'cone 6' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Put the readings right' }).click();
    expect(await box(page).inputValue()).toBe(TYPED);
    await box(page).fill(TYPED.replace('2232', '1922'));
    await dialog(page).getByRole('button', { name: 'Open it so' }).click();
    await page.locator('.sheet-head', { hasText: 'peak 1050' }).waitFor();
    await settled(page);
    expect(await page.locator('.verdict').innerText()).toContain('cone 6');
  });

  test('are saved as a text that can be opened again, and put right from there', async () => {
    const { page, save, choose } = window();
    await page.getByRole('button', { name: 'Type readings in…' }).first().click();
    await box(page).fill(TYPED);
    await dialog(page).locator('.pick-one', { hasText: '°F' }).click();
    const { fileName, text } = await save(() => press(page, 'Save as text…'));
    expect(fileName).toMatch(/^Typed in at \d+h\d\d\.txt$/);
    expect(text).toBe('8:00 68 °F\n11:00 1112 °F lid closed\n17:40 2232 °F');
    await press(page, 'Begin another');
    expect(await box(page).inputValue()).toBe('');
    await page.keyboard.press('Escape');
    await dialog(page).waitFor({ state: 'detached' });

    const folder = mkdtempSync(join(tmpdir(), 'typed-'));
    writeFileSync(join(folder, 'glaze.txt'), text);
    await choose([join(folder, 'glaze.txt')], () => page.keyboard.press('o'));
    await settled(page);
    expect(await head(page)).toMatch(/peak 1222\s°C/);
    await page.keyboard.press('i');
    expect(await box(page).inputValue()).toBe(text);
    rmSync(folder, { recursive: true });
  });

  test('the draft stays while other things are done, and another log does not become it', async () => {
    const { page } = window();
    await page.keyboard.press('i');
    await box(page).fill('8:00 68\n11:00 1112');
    await page.keyboard.press('Escape');
    await dropFiles(page, [textFile('mine.txt', '0:00 20 °C\n3:00 600\n9:30 1222\n')]);
    await settled(page);
    await page.keyboard.press('i');
    expect(await box(page).inputValue()).toBe('8:00 68\n11:00 1112');
  });
});
