import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { SHORTCUTS } from '../../renderer/app/shortcuts.ts';
import { CURVE_KEYS } from '../../renderer/curve/keys.ts';
import { overBothHosts, type HostedWindow } from './hosts.ts';
import { plain, printed } from './sheet.ts';
import { readout, SAMPLES, settled } from './window.ts';

const LOG = join(SAMPLES, 'underfired-glaze.txt');
const SCHEDULE = join(SAMPLES, 'underfired-glaze.schedule.json');

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

const hasFocus = (page: Page, selector: string): Promise<boolean> =>
  page.locator(selector).evaluate((it) => it === document.activeElement);

const isPressed = (page: Page, button: string): Promise<string | null> =>
  page.getByRole('button', { name: button }).getAttribute('aria-pressed');

const wholeFiring = (page: Page) => page.getByRole('button', { name: 'Whole firing' });

/** Opens the firing by keys alone. */
const openFiring = async ({ page, choose }: HostedWindow): Promise<void> => {
  await choose([LOG], () => page.keyboard.press('o'));
  await page.getByRole('heading', { level: 1, name: 'underfired-glaze.txt' }).waitFor();
  await settled(page);
  await choose([SCHEDULE], () => page.keyboard.press('s'));
  await page.getByText('Stoneware glaze with hold').first().waitFor();
  await settled(page);
};

/** What each key of the list does, tried on the open firing with nothing chosen. */
const TRIED: Readonly<Record<string, (window: HostedWindow) => Promise<void>>> = {
  'Ctrl O': ({ page, choose }) => choose([LOG], () => page.keyboard.press('Control+o')),
  'Ctrl Shift O': ({ page, choose }) =>
    choose([SCHEDULE], () => page.keyboard.press('Control+Shift+O')),
  'Ctrl S': async ({ page, save }) => {
    const { fileName } = await save(() => page.keyboard.press('Control+s'));
    expect(fileName).toBe('underfired-glaze.report.html');
  },
  'Ctrl P': async ({ page }) => {
    expect(await printed(page)).toContain('underfired-glaze.txt');
  },
  O: ({ page, choose }) => choose([LOG], () => page.keyboard.press('o')),
  S: ({ page, choose }) => choose([SCHEDULE], () => page.keyboard.press('s')),
  I: async ({ page }) => {
    await page.keyboard.press('i');
    const dialog = page.getByRole('dialog', { name: 'Type readings in' });
    await dialog.waitFor();
    expect(await hasFocus(page, '.typed-text')).toBe(true);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
  },
  T: async ({ page }) => {
    await page.keyboard.press('t');
    expect(await hasFocus(page, '#telling')).toBe(true);
    await page.keyboard.press('t');
    expect(await page.locator('#telling').count()).toBe(0);
  },
  D: async ({ page }) => {
    const desk = page.getByRole('heading', { name: 'Reading desk' });
    await page.keyboard.press('d');
    await desk.waitFor();
    await page.keyboard.press('d');
    await desk.waitFor({ state: 'detached' });
  },
  N: async ({ page }) => {
    await page.keyboard.press('n');
    expect(await hasFocus(page, '#finding-A')).toBe(true);
    await page.keyboard.press('n');
    expect(await hasFocus(page, '#finding-B')).toBe(true);
  },
  P: async ({ page }) => {
    const last = page.locator('.note-head').last();
    await page.keyboard.press('p');
    expect(await last.getAttribute('aria-expanded')).toBe('true');
  },
  C: async ({ page }) => {
    await page.keyboard.press('c');
    expect(await hasFocus(page, '#crosshair')).toBe(true);
  },
  U: async ({ page }) => {
    await page.keyboard.press('u');
    expect(await isPressed(page, 'Degrees Fahrenheit')).toBe('true');
    await page.keyboard.press('u');
    expect(await isPressed(page, 'Degrees Celsius')).toBe('true');
  },
  '0': async ({ page }) => {
    await page.keyboard.press('c');
    await page.keyboard.press('+');
    await wholeFiring(page).waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('0');
    await wholeFiring(page).waitFor({ state: 'detached' });
  },
  R: async ({ page, save }) => {
    const { text } = await save(() => page.keyboard.press('r'));
    expect(text).toMatch(/^<!doctype html>/);
  },
  V: async ({ page, copied }) => {
    await page.keyboard.press('v');
    await vi.waitFor(async () => {
      expect(await copied()).toContain('underfired-glaze.txt');
    });
    await page.getByText('The verdict is on the clipboard.').waitFor();
  },
  '?': async ({ page }) => {
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    await page.keyboard.press('Escape');
  },
  Esc: async ({ page }) => {
    await page.keyboard.press('n');
    await page.locator('.note-open').waitFor();
    await page.keyboard.press('Escape');
    expect(await page.locator('.note-open').count()).toBe(0);
    await page.keyboard.press('t');
    await page.locator('#telling').waitFor();
    await page.keyboard.press('Escape');
    await page.locator('#telling').waitFor({ state: 'detached' });
  },
};

overBothHosts((window) => {
  let page: Page;
  beforeEach(() => {
    ({ page } = window());
  });

  describe('by the keyboard alone', () => {
    test('a firing is opened, its schedule chosen, its findings walked, its curve read, its unit changed, its report saved', async () => {
      const { save } = window();
      await openFiring(window());
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

      await page.keyboard.press('u');
      expect((await readout(page))['kiln']).toMatch(/ °F$/);
      expect(await page.locator('#announcer').innerText()).toBe('Degrees Fahrenheit.');
      const { fileName, text } = await save(() => page.keyboard.press('Control+s'));
      expect(fileName).toBe('underfired-glaze.report.html');
      expect(text).toContain('°F');
    });

    test('everything is reached with Tab: a menu, a sample, a sentence, a note, the panel of what is told', async () => {
      await tabTo(page, /^View/);
      await page.keyboard.press('Enter');
      await page.getByRole('menuitem', { name: 'Dark' }).waitFor();
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
      await tabTo(page, /overshoot\.csv/);
      await page.keyboard.press('Enter');
      await settled(page);
      await tabTo(page, /The target of 1210/);
      await page.keyboard.press('Enter');
      expect(await page.locator('.note-open').innerText()).toContain('The target of 1210');
      await page.keyboard.press('Enter');
      expect(await page.locator('.note-open').count()).toBe(0);
      await page.evaluate(() => (document.activeElement as HTMLElement).blur());
      await tabTo(page, /^Schedule and kiln/);
      await page.keyboard.press('Enter');
      await tabTo(page, /^Make one from a cone/);
      await page.keyboard.press('Enter');
      await tabTo(page, /^Use this schedule/);
      await page.keyboard.press('Enter');
      await page.getByText('The answer goes by this schedule.').waitFor();
    });
  });

  describe('the list of keys', () => {
    test('shows every key, and every key does what the list says', async () => {
      await openFiring(window());
      await page.keyboard.press('?');
      const dialog = page.getByRole('dialog', { name: 'Keys' });
      const listed = await dialog.locator('kbd').allInnerTexts();
      expect(listed.map(plain)).toEqual([...SHORTCUTS, ...CURVE_KEYS].map(({ shown }) => shown));
      expect(Object.keys(TRIED).sort()).toEqual(SHORTCUTS.map(({ shown }) => shown).sort());
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'detached' });
      // The keys on the curve are tried in curve.test.ts.
      for (const { shown } of SHORTCUTS) {
        await TRIED[shown]?.(window());
        await page.keyboard.press('Escape');
        await settled(page);
        if ((await page.locator('.verdict').innerText()).includes('No schedule was given')) {
          await window().choose([SCHEDULE], () => page.keyboard.press('s'));
          await page.getByText('Stoneware glaze with hold').first().waitFor();
          await settled(page);
        }
      }
    });

    test('opens with ?, holds the focus, and gives it back', async () => {
      await tabTo(page, /Open a log/);
      await page.keyboard.press('?');
      const dialog = page.getByRole('dialog', { name: 'Keys' });
      await dialog.waitFor();
      await page.keyboard.press('u');
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'detached' });
      const focused = await page.evaluate(() => document.activeElement?.textContent);
      expect(focused).toContain('Open a log');
      expect(await isPressed(page, 'Degrees Celsius')).toBe('true');
    });

    test('has a switch for single keys, which then do nothing', async () => {
      await page.keyboard.press('?');
      await page.getByRole('checkbox', { name: /Single keys/ }).focus();
      await page.keyboard.press('Space');
      await page.keyboard.press('Escape');
      await page.keyboard.press('u');
      expect(await isPressed(page, 'Degrees Celsius')).toBe('true');
    });
  });
});
