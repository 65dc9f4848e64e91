import type { Page } from 'playwright-core';
import { describe, expect, test, vi } from 'vitest';
import type { AnalysisDocument } from '../../core/model/document.ts';
import { wording } from '../../core/wording/wording.ts';
import { overBothHosts } from './hosts.ts';
import { allSaid, documentOf, plain, printed, tell, trySample } from './sheet.ts';
import { settled } from './window.ts';

/** What only an electric kiln has; no word of it may stand anywhere once the kiln burns fuel. */
const ELECTRIC = /\b(elements?|relays?|coils?|breakers?|contactors?|fuses?)\b/i;

/** A climb that the power cut delayed, and one that was slow by itself under a peak not reached. */
const SLOW_CLIMBS = [
  { logName: 'power-cut.csv', scheduleName: 'power-cut.schedule.json' },
  { logName: 'underfired-glaze.txt', scheduleName: 'underfired-glaze.schedule.json' },
] as const;

const verdictOf = (document: AnalysisDocument): string[] =>
  wording(document, 'C').verdict.map(({ text }) => plain(text));

/** All that a note says once it is open. */
const notesOf = (document: AnalysisDocument): string[] =>
  wording(document, 'C').findings.flatMap(({ title, why, couldBe, remedy, caution }) =>
    [
      ...[title.text, why, remedy, caution ?? ''],
      ...couldBe.flatMap(({ cause, tell: check }) => [cause, check]),
    ].map(plain),
  );

/** Every word of the page, shown or hidden, with the names that only screen readers get. */
const everyWord = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const names = ['aria-label', 'title', 'placeholder', 'alt'].flatMap((name) =>
      [...document.querySelectorAll(`[${name}]`)].map((part) => part.getAttribute(name) ?? ''),
    );
    const hidden = [...document.querySelectorAll('script, style')].map(
      ({ textContent }) => textContent,
    );
    const all = document.documentElement.textContent;
    return [hidden.reduce((text, code) => text.replace(code, ' '), all), ...names].join(' ');
  });

/** Every word of the page with one note after another open: opening one closes the one before. */
const wordsWithNotes = async (page: Page): Promise<string> => {
  const heads = page.locator('.note-head');
  const words = [await everyWord(page)];
  for (let index = 0; index < (await heads.count()); index++) {
    const head = heads.nth(index);
    if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
    words.push(await everyWord(page));
  }
  return plain(words.join(' '));
};

/** Waits until the verdict is the core's; gives every word of the page, the notes' among them. */
const answered = async (page: Page, document: AnalysisDocument): Promise<string> => {
  await vi.waitFor(
    async () => {
      const verdict = (await allSaid(page.locator('.verdict > p'))).join(' ');
      expect(verdictOf(document).filter((text) => !verdict.includes(text))).toEqual([]);
      expect(await page.locator('.note').count()).toBe(document.findings.length);
      // The cautions at the foot tell the answers apart where the verdict is the same.
      const words = plain(await everyWord(page));
      const { cautions } = wording(document, 'C');
      expect(cautions.filter((text) => !words.includes(plain(text)))).toEqual([]);
    },
    { timeout: 15_000, interval: 100 },
  );
  await settled(page);
  const words = await wordsWithNotes(page);
  expect(notesOf(document).filter((text) => !words.includes(text))).toEqual([]);
  return words;
};

overBothHosts((window) => {
  describe('“heated by fuel” changes the answer at once', () => {
    test.each(SLOW_CLIMBS)('$logName', async ({ logName, scheduleName }) => {
      const { page } = window();
      const told = { kiln: { heat: 'fuel' } } as const;
      const [electric, fuel] = [
        documentOf(logName, scheduleName),
        documentOf(logName, scheduleName, told),
      ];
      expect(fuel.findings.map(({ id }) => id)).toContain('ramp-slow');
      expect(notesOf(fuel)).not.toEqual(notesOf(electric));
      await trySample(page, logName);
      expect(await answered(page, electric)).toMatch(ELECTRIC);
      const panel = await tell(page);
      await panel.getByText('fuel', { exact: true }).click();
      await panel.getByText('The answer speaks of fuel, burners, air and damper').waitFor();
      const words = await answered(page, fuel);
      expect(words).toContain('carbon monoxide');
      expect(ELECTRIC.exec(words)).toBeNull();
      expect(ELECTRIC.exec(await printed(page))).toBeNull();
      await panel.getByText('electric', { exact: true }).click();
      await answered(page, electric);
    });

    test('the verdict too, where it told of something electric', async () => {
      const { page } = window();
      const [{ logName, scheduleName }] = SLOW_CLIMBS;
      const electric = documentOf(logName, scheduleName);
      const fuel = documentOf(logName, scheduleName, { kiln: { heat: 'fuel' } });
      const gone = verdictOf(electric).filter((text) => !verdictOf(fuel).includes(text));
      expect(gone.length).toBeGreaterThan(0);
      await trySample(page, logName);
      await answered(page, electric);
      await (await tell(page)).getByText('fuel', { exact: true }).click();
      await answered(page, fuel);
      await settled(page);
      const verdict = (await allSaid(page.locator('.verdict > p'))).join(' ');
      expect(gone.filter((text) => verdict.includes(text))).toEqual([]);
    });

    test('the panel asks an electric kiln, told or not, for its plate; one that burns fuel not', async () => {
      const { page } = window();
      await trySample(page, 'good-glaze.csv');
      const panel = await tell(page);
      await panel.getByText('While this is not said').waitFor();
      expect(await panel.getByLabel('Rated power').isVisible()).toBe(true);
      expect(await panel.getByLabel('Element circuits').isVisible()).toBe(true);
      await panel.getByText('fuel', { exact: true }).click();
      await panel.getByLabel('Rated power').waitFor({ state: 'detached' });
      expect(await panel.getByLabel('Element circuits').count()).toBe(0);
    });
  });
});
