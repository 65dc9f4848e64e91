import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { htmlReport } from '../../core/report/html-report.ts';
import { overBothHosts } from './hosts.ts';
import { documentOf, pickFrom, plain, printed, said, savedBy, tell, trySample } from './sheet.ts';
import { dropFiles, sampleFile, SAMPLES, settled, textFile } from './window.ts';

const LOG = 'overshoot.csv';
const SCHEDULE = 'overshoot.schedule.json';

/** Drops a log of so many seconds that the page writes itself: it is too large to be sent there. */
const dropLargeLog = (page: Page, rows: number): Promise<void> =>
  page.evaluate((count) => {
    const lines = ['seconds,temperature °C'];
    for (let row = 0; row < count; row++) lines.push(`${row},${20 + (row / count) * 1000}`);
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([lines.join('\n')], 'large.csv'));
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true }));
  }, rows);

/** How many sheets of paper a page takes; the printer's wide margins give way to its own (CSS Paged Media). */
const pagesOf = async (page: Page): Promise<number> => {
  const [top, left] = ['60mm', '40mm'];
  const pdf = await page.pdf({ format: 'A4', margin: { top, bottom: top, left, right: left } });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
};

overBothHosts((window) => {
  describe('a log is opened', () => {
    test('by the dialog of the bar, and by the one of the first page', async () => {
      const { page, choose } = window();
      const buttons = page.getByRole('button', { name: 'Open a log' });
      await choose([join(SAMPLES, LOG)], () => buttons.last().click());
      await page.getByRole('heading', { level: 1, name: LOG }).waitFor();
      await choose([join(SAMPLES, 'decal.txt')], () => buttons.first().click());
      await page.getByRole('heading', { level: 1, name: 'decal.txt' }).waitFor();
      await settled(page);
    });

    test.each(['.bar', 'main', '#crosshair', '#told'])('by dropping it on %s', async (onto) => {
      const { page } = window();
      if (onto !== '.bar' && onto !== 'main') await trySample(page, 'good-bisque.csv');
      if (onto === '#told') await tell(page);
      await dropFiles(page, [sampleFile(LOG)], onto);
      await page.getByRole('heading', { level: 1, name: LOG }).waitFor();
      await settled(page);
      expect(await said(page, '.verdict')).toContain('No schedule was given');
    });

    test('with its schedule, dropped together, the schedule known as one', async () => {
      const { page } = window();
      await dropFiles(page, [sampleFile(LOG), sampleFile(SCHEDULE)]);
      await settled(page);
      expect(await said(page, '.sheet-head')).toContain('Stoneware glaze with hold');
    });

    test('and its schedule dropped later, which changes the answer', async () => {
      const { page } = window();
      await dropFiles(page, [sampleFile('power-cut.csv')]);
      await settled(page);
      expect(await said(page, '.verdict')).toContain('No schedule was given');
      await dropFiles(page, [sampleFile('power-cut.schedule.json')]);
      await page.getByText('cone 6 meant').waitFor();
      await settled(page);
      expect(await said(page, '.verdict')).toContain('On the climb to 1095 °C');
    });

    test('or refused, with its line, its reason and what to try', async () => {
      const { page } = window();
      await dropFiles(page, [textFile('cut-off.csv', 'time,temp\n')]);
      await page.getByRole('heading', { name: 'cut-off.csv could not be read' }).waitFor();
      const state = await said(page, '.state');
      expect(state).toContain('Line 1');
      expect(state).toContain('time,temp');
      expect(state).toContain('What to try');
      await page.getByRole('button', { name: 'Back to the start' }).click();
      await page.getByRole('heading', { name: 'Drop the log of a firing here' }).waitFor();
    });
  });

  describe('a file whose bytes come slowly', () => {
    /** From now on such files are given only when the test says so. */
    const holdBack = (page: Page, name: string): Promise<void> =>
      page.evaluate((held) => {
        const given = new Promise<void>((give) => Object.assign(globalThis, { give }));
        const whole = Object.getOwnPropertyDescriptor(Blob.prototype, 'arrayBuffer');
        const read = whole?.value as () => Promise<ArrayBuffer>;
        Blob.prototype.arrayBuffer = async function (this: Blob) {
          if (this instanceof File && this.name === held) await given;
          return read.call(this);
        };
      }, name);
    const give = (page: Page): Promise<void> =>
      page.evaluate(() => {
        (Reflect.get(globalThis, 'give') as () => void)();
      });
    const reading = (page: Page) => page.getByRole('heading', { name: 'Reading slow.csv' });
    const slow = { ...sampleFile('good-bisque.csv'), name: 'slow.csv' };

    test('is waited for in sight, and then shown', async () => {
      const { page } = window();
      await trySample(page, LOG);
      await holdBack(page, 'slow.csv');
      await dropFiles(page, [slow]);
      await reading(page).waitFor();
      expect(await said(page, '.state')).toContain('Taking the file in: step 1 of 4');
      await give(page);
      await page.getByRole('heading', { level: 1, name: 'slow.csv' }).waitFor();
      await settled(page);
    });

    test('can be stopped, and does not come back', async () => {
      const { page } = window();
      await trySample(page, LOG);
      await holdBack(page, 'slow.csv');
      for (const stop of [
        () => page.getByRole('button', { name: 'Stop' }).click(),
        () => page.keyboard.press('Escape'),
      ]) {
        await dropFiles(page, [slow]);
        await reading(page).waitFor();
        await stop();
        await settled(page);
      }
      await give(page);
      await page.waitForTimeout(300);
      expect(await said(page, '.sheet-head')).toContain(LOG);
    });

    test('does not take the place of one that was opened later', async () => {
      const { page } = window();
      await holdBack(page, 'slow.csv');
      await dropFiles(page, [slow]);
      await reading(page).waitFor();
      await dropFiles(page, [sampleFile(LOG)]);
      await page.getByRole('heading', { level: 1, name: LOG }).waitFor();
      await give(page);
      await page.waitForTimeout(300);
      await settled(page);
      expect(await said(page, '.sheet-head')).toContain(LOG);
    });
  });

  describe('what is kept of a firing', () => {
    test('is in the reader’s unit', async () => {
      const { page } = window();
      await trySample(page, LOG);
      await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
      const report = await savedBy(window(), 'Report as HTML');
      expect(report.text).toBe(htmlReport(documentOf(LOG, SCHEDULE), 'F'));
      expect((await savedBy(window(), 'Curve as CSV')).text).toMatch(/_f\b|°F/i);
      expect(await printed(page)).toContain('°F');
    });

    test('is printed by its menu too: the report, and not the window', async () => {
      const { page } = window();
      await trySample(page, LOG);
      const text = await printed(page, () =>
        page
          .getByRole('button', { name: 'Save' })
          .click()
          .then(() => page.getByRole('menuitem', { name: 'Print the report' }).click()),
      );
      expect(text.startsWith(LOG)).toBe(true);
      expect(text).not.toContain('Open a log');
    });

    test('is printed on as much paper, with the same margins, as the report that is saved', async () => {
      const { page } = window();
      await trySample(page, LOG);
      const report = await page.context().browser()!.newPage();
      await report.setContent(htmlReport(documentOf(LOG, SCHEDULE), 'C'));
      const saved = await pagesOf(report);
      await report.close();
      await page.evaluate(() => {
        globalThis.print = () => undefined;
      });
      await page.keyboard.press('Control+p');
      await page.locator('.print-only').waitFor({ state: 'attached' });
      expect(saved).toBeGreaterThan(1);
      expect(await pagesOf(page)).toBe(saved);
      await page.evaluate(() => globalThis.dispatchEvent(new Event('afterprint')));
      expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
    });
  });

  describe('a large log', () => {
    test('is read in steps while the window answers, and the reading can be stopped', async () => {
      const { page } = window();
      await trySample(page, 'good-bisque.csv');
      await dropLargeLog(page, 1_000_000);
      await page.getByRole('heading', { name: 'Reading large.csv' }).waitFor();
      const progress = page.getByRole('progressbar', { name: 'Progress of the reading' });
      const first = Number(await progress.getAttribute('value'));
      expect(await said(page, '.state')).toMatch(/step \d of \d/);
      await page.keyboard.press('u');
      const unit = page.getByRole('button', { name: 'Degrees Fahrenheit' });
      expect(await unit.getAttribute('aria-pressed')).toBe('true');
      // In the page itself: between two of our own questions a quick reading could come to its end.
      const isStopped = await page.waitForFunction((value) => {
        const shown = document.querySelector('progress');
        if (shown && shown.value <= value) return null;
        const stop = [...document.querySelectorAll('button')].find(
          ({ textContent }) => textContent === 'Stop',
        );
        stop?.click();
        return { isStopped: shown !== null && stop !== undefined };
      }, first);
      expect(await isStopped.jsonValue()).toEqual({ isStopped: true });
      await settled(page);
      expect(await page.locator('#announcer').innerText()).toBe('Reading was stopped.');
      expect(await said(page, '.sheet-head')).toContain('good-bisque.csv');
      expect(await said(page, '.sheet-head')).toContain('°F');
      // The worker was ended with the log: the sheet's own log is read again to answer.
      await pickFrom(await tell(page), /Meant to reach/, 'cone 9');
      await page.getByText('where cone 9 was meant').first().waitFor();
      expect(plain(await page.locator('.verdict').innerText())).toContain('cone 9');
    });
  });
});
