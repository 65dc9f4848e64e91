import { beforeEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { overBothHosts } from './hosts.ts';
import { said, trySample } from './sheet.ts';

const noteHead = '.note-open .note-head';

overBothHosts((window) => {
  let page: Page;
  beforeEach(() => {
    ({ page } = window());
  });

  describe('from a sentence to its evidence', () => {
    test('a verdict’s sentence opens the note that it rests on, and dims the others', async () => {
      await trySample(page, 'overshoot.csv');
      await page.locator('.verdict a').nth(1).click();
      const open = page.locator('.note-open');
      expect(await said(page, '.note-open .note-title')).toContain('The target of 1210 °C');
      for (const part of ['measured', 'held against', 'What to do', 'What else it could be']) {
        expect(await open.innerText()).toContain(part);
      }
      expect(await open.innerText()).toContain('Caution.');
      const others = (await page.locator('.note-head').count()) - 1;
      expect(others).toBeGreaterThan(0);
      expect(await page.locator('.note-dim').count()).toBe(others);
      expect(await page.locator('.letter-dim').count()).toBe(others);
      expect(await page.getByRole('button', { name: 'Whole firing' }).isVisible()).toBe(true);
    });

    test('a letter on the curve opens its note, and the note closes again', async () => {
      await trySample(page, 'overshoot.csv');
      const letter = page.locator('.letter-mark').first();
      await letter.click();
      expect(await letter.getAttribute('aria-pressed')).toBe('true');
      const head = page.locator(noteHead);
      expect(await head.getAttribute('aria-expanded')).toBe('true');
      await head.click();
      expect(await page.locator('.note-open').count()).toBe(0);
      await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
    });

    test('a sentence about the couple leads to the cautions', async () => {
      await trySample(page, 'good-bisque.csv');
      await page.locator('.verdict a').nth(2).click();
      const title = page.locator('#cautions-title');
      expect(await title.evaluate((it) => it === document.activeElement)).toBe(true);
    });

    test('a leg and a part of the heat-work bring their stretch up on the curve', async () => {
      await trySample(page, 'overshoot.csv');
      for (const table of ['.legs-table', '.cones-parts']) {
        await page.locator(`${table} tbody button`).last().click();
        await page.getByRole('button', { name: 'Whole firing' }).click();
        await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
      }
    });
  });

  describe('how the log was read', () => {
    test('can be put right, and the log is read anew', async () => {
      await trySample(page, 'good-glaze.csv');
      const peak = /peak \d+/.exec(await said(page, '.sheet-head'))?.[0] ?? '?';
      /** Waits until the sheet is at rest and says that peak, or another. */
      const untilPeak = (isThat: boolean) =>
        page.waitForFunction(
          ([text, expected]) => {
            const head = document.querySelector('.sheet-head');
            const isAtRest = head !== null && head.querySelector('.working') === null;
            return isAtRest && head.textContent.includes(text) === expected;
          },
          [peak, isThat] as const,
        );
      await page.getByRole('button', { name: /Temperatures are in/ }).click();
      await page.getByRole('option', { name: 'Degrees Fahrenheit' }).click();
      await untilPeak(false);
      await page.getByRole('button', { name: 'read it as before' }).click();
      await untilPeak(true);
    });

    test('shows each rejected row, the last one too', async () => {
      await trySample(page, 'failing-couple.csv');
      const rows = page.getByRole('table', { name: /^Rejected rows/ });
      const count = Number(await rows.getAttribute('aria-rowcount'));
      expect(count).toBeGreaterThan(2);
      await rows.press('End');
      await rows.locator(`[aria-rowindex="${count}"]`).waitFor();
    });
  });
});
