import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { curveCsv, legsCsv } from '../../core/report/csv.ts';
import { htmlReport } from '../../core/report/html-report.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import { wording, type Words } from '../../core/wording/wording.ts';
import { SAMPLES as LISTED } from '../../renderer/samples/samples.ts';
import { overBothHosts } from './hosts.ts';
import { outOfReach } from './room.ts';
import {
  expectCones,
  expectCurve,
  expectLegs,
  expectNotes,
  expectPower,
  expectReading,
} from './sample-sheet.ts';
import { celsiusLeftIn } from './unit-left.ts';
import { allSaid, chooseToSave, chooseView, documentOf, plain, printed, savedBy } from './sheet.ts';
import { SAMPLES, settled } from './window.ts';

const verdictOf = ({ verdict, load }: Words): string[] => [
  ...verdict.map(({ text }) => plain(text)),
  plain(load.answer),
];

/** One after the other in one window: nothing of the one before may be left over. */
overBothHosts(
  (window) => {
    describe.each(LISTED)('$logName', ({ logName, scheduleName }) => {
      let firing: AnalysisDocument;
      let words: Words;
      const verdict = () => allSaid(window().page.locator('.verdict > p'));

      beforeAll(async () => {
        const { page, choose } = window();
        await page.keyboard.press('Escape');
        firing = documentOf(logName, scheduleName);
        words = wording(firing, 'C');
        await choose([join(SAMPLES, logName)], () => page.keyboard.press('Control+o'));
        await page.getByRole('heading', { level: 1, name: logName }).waitFor();
        await settled(page);
        await choose([join(SAMPLES, scheduleName)], () => page.keyboard.press('s'));
        await vi.waitFor(async () => {
          expect(await verdict()).toEqual(verdictOf(words));
        }, 15_000);
        await settled(page);
      });

      test('its verdict leads to the evidence', async () => {
        const { page } = window();
        const links = page.locator('.verdict a');
        expect(await links.count()).toBe(words.verdict.length + 1);
        for (const link of await links.all()) {
          await link.click();
          const [target = ''] = /#.*/.exec((await link.getAttribute('href')) ?? '') ?? [];
          const at = page.locator(target);
          expect(await at.evaluate((it) => it.contains(document.activeElement)), target).toBe(true);
          expect(await at.evaluate((it) => it.getBoundingClientRect().top < innerHeight)).toBe(
            true,
          );
        }
        await page.keyboard.press('Escape');
        await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
      });

      test('its curve is drawn on one clock, with phases, legs and letters', () =>
        expectCurve(window().page, firing, words));
      test('its notes open to all that was found', () => expectNotes(window().page, words));
      test('its heat-work is shown', () => expectCones(window().page, firing, words));
      test('its power and loss are told', () => expectPower(window().page, words));

      test('its legs and slopes are tables', () => expectLegs(window().page, words));
      test('it says how the log was read', () => expectReading(window().page, words));

      test('what is saved, copied and printed is what the core writes', async () => {
        const { page, copied } = window();
        const report = await savedBy(window(), 'Report as HTML');
        const stem = logName.replace(/\.\w+$/, '');
        expect(report).toMatchObject({
          fileName: `${stem}.report.html`,
          text: htmlReport(firing, 'C'),
        });
        expect((await savedBy(window(), 'Curve as CSV')).text).toBe(curveCsv(firing, 'C'));
        expect((await savedBy(window(), 'Legs as CSV')).text).toBe(legsCsv(firing, 'C'));
        await chooseToSave(page, 'Copy the verdict');
        await page.getByText('The verdict is on the clipboard.').waitFor();
        const text = plain(await copied());
        const onPaper = await printed(page);
        for (const sentence of verdictOf(words)) {
          expect(text).toContain(sentence);
          expect(onPaper).toContain(sentence);
        }
      });

      test('in °F nothing is left in °C', async () => {
        const { page } = window();
        await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
        expect(await verdict()).toEqual(verdictOf(wording(firing, 'F')));
        expect(await celsiusLeftIn(page)).toEqual([]);
        await page.getByRole('button', { name: 'Degrees Celsius' }).click();
        expect(await verdict()).toEqual(verdictOf(words));
      });

      test('all of it can be read at 900 × 600 with text at 200 %', async () => {
        const { page } = window();
        const size = page.viewportSize()!;
        await page.setViewportSize({ width: 900, height: 600 });
        await chooseView(page, 'Text at 200 %');
        const lost = await outOfReach(page);
        for (const note of await page.locator('.note-head').all()) {
          await note.click();
          lost.push(...(await outOfReach(page)));
        }
        await chooseView(page, 'Text at 100 %');
        await page.setViewportSize(size);
        expect(lost).toEqual([]);
      });
    });
  },
  { lasts: 'the suite', context: { reducedMotion: 'reduce' } },
);
