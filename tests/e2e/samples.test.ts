import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { analyze } from '../../core/analyze.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { wording, type Words } from '../../core/wording/wording.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { SAMPLES as LISTED } from '../../renderer/samples/samples.ts';
import { launchBrowser, openWindow, SAMPLES, sampleText, settled } from './window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());

/** What the core says of a sample: the window must say the same, and nothing of its own. */
const wordsOf = (logName: string, scheduleName: string, unit: 'C' | 'F'): Words => {
  const schedule = readSchedule(sampleText(scheduleName), scheduleName);
  const bytes = readFileSync(join(SAMPLES, logName));
  return wording(analyze(bytes, logName, { schedule }, { guessEncoding }).document, unit);
};

const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

describe('every sample', () => {
  test.each(LISTED)('$logName is shown as the core tells it', async (sample) => {
    const { page, problems, strayRequests, close } = await openWindow(browser);
    await page.getByRole('button', { name: sample.logName }).click();
    await settled(page);
    const words = wordsOf(sample.logName, sample.scheduleName, 'C');
    const verdict = await page.locator('.verdict > p').allInnerTexts();
    expect(verdict.map(plain)).toEqual([
      ...words.verdict.map(({ text }) => plain(text)),
      plain(words.load.answer),
    ]);
    const notes = await page.locator('.note-title').allInnerTexts();
    expect(notes.map(plain)).toEqual(words.findings.map(({ title }) => plain(title.text)));
    expect(await page.locator('.letter-mark').count()).toBe(words.findings.length);

    await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
    const inFahrenheit = wordsOf(sample.logName, sample.scheduleName, 'F');
    expect((await page.locator('.verdict > p').allInnerTexts()).map(plain)).toEqual([
      ...inFahrenheit.verdict.map(({ text }) => plain(text)),
      plain(inFahrenheit.load.answer),
    ]);
    expect(await page.locator('main').innerText()).not.toMatch(/\d °C/);
    expect(problems).toEqual([]);
    expect(strayRequests).toEqual([]);
    await close();
  });
});
