import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { join } from 'node:path';
import { launchBrowser, openWindow, readout, SAMPLES, settled } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

/** Presses Tab until something with this name has the focus. */
const tabTo = async (page: Page, name: RegExp): Promise<void> => {
  for (let presses = 0; presses < 60; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      return element?.getAttribute('aria-label') ?? element?.textContent ?? '';
    });
    if (name.test(focused)) return;
  }
  throw new Error(`Tab never came to ${name.source}`);
};

/** Answers the file dialog that a key opens. */
const choosing = async (page: Page, key: string, file: string): Promise<void> => {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.keyboard.press(key)]);
  await chooser.setFiles(join(SAMPLES, file));
};

describe('by the keyboard alone', () => {
  test('a firing is opened, its schedule chosen, its findings walked, its curve read, its report saved', async () => {
    const window = await openWindow(browser);
    const { page } = window;
    await choosing(page, 'o', 'underfired-glaze.txt');
    await settled(page);
    await choosing(page, 's', 'underfired-glaze.schedule.json');
    await page.getByText('Stoneware glaze with hold').waitFor();
    await settled(page);

    const letters: string[] = [];
    for (;;) {
      await page.keyboard.press('n');
      const open = page.locator('.note-open .note-head');
      if ((await open.count()) === 0) break;
      letters.push((await open.getAttribute('id')) ?? '');
      expect(await open.evaluate((it) => it === document.activeElement)).toBe(true);
    }
    const findings = await page.locator('.note-head').count();
    expect(findings).toBeGreaterThan(1);
    expect(letters).toEqual(
      Array.from({ length: findings }, (_, i) => `finding-${String.fromCharCode(65 + i)}`),
    );

    await page.keyboard.press('c');
    const slider = page.getByRole('slider', { name: 'Crosshair on the curve' });
    expect(await slider.evaluate((it) => it === document.activeElement)).toBe(true);
    const before = await readout(page);
    for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowLeft');
    const after = await readout(page);
    expect(after['time']).not.toBe(before['time']);
    expect(await slider.getAttribute('aria-valuetext')).toContain(`kiln ${after['kiln']!}`);
    await page.keyboard.press('+');
    await page.getByRole('button', { name: 'Whole firing' }).waitFor();
    await page.keyboard.press('0');
    await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });

    await page.keyboard.press('u');
    expect((await readout(page))['kiln']).toMatch(/ °F$/);
    expect(await page.locator('#announcer').innerText()).toBe('Degrees Fahrenheit.');

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.keyboard.press('Control+s'),
    ]);
    expect(download.suggestedFilename()).toBe('underfired-glaze.report.html');
    expect(window.problems).toEqual([]);
    await window.close();
  });

  test('everything is reached with Tab alone: a sample, a sentence, a letter, a note, a menu', async () => {
    const { page, close } = await openWindow(browser);
    await tabTo(page, /overshoot\.csv/);
    await page.keyboard.press('Enter');
    await settled(page);
    await tabTo(page, /The hold at 1210/);
    await page.keyboard.press('Enter');
    expect(await page.locator('.note-open').innerText()).toContain('The hold at 1210');
    await page.keyboard.press('Enter');
    expect(await page.locator('.note-open').count()).toBe(0);
    await page.keyboard.press('Home');
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await tabTo(page, /^View/);
    await page.keyboard.press('Enter');
    await page.getByRole('menuitem', { name: 'Dark' }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
    await close();
  });

  test('the list of keys opens with ?, holds the focus, and gives it back', async () => {
    const { page, close } = await openWindow(browser);
    await tabTo(page, /Open a log/);
    await page.keyboard.press('?');
    const dialog = page.getByRole('dialog', { name: 'Keys' });
    await dialog.waitFor();
    await page.keyboard.press('u');
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Open a log');
    const unit = page.getByRole('button', { name: 'Degrees Celsius' });
    expect(await unit.getAttribute('aria-pressed')).toBe('true');
    await close();
  });

  test('single keys can be switched off', async () => {
    const { page, close } = await openWindow(browser);
    await page.keyboard.press('?');
    await page.getByRole('checkbox', { name: /Single keys/ }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Escape');
    await page.keyboard.press('u');
    const unit = page.getByRole('button', { name: 'Degrees Celsius' });
    expect(await unit.getAttribute('aria-pressed')).toBe('true');
    await close();
  });
});
