import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { analyze } from '../../core/analyze.ts';
import { htmlReport } from '../../core/report/html-report.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { wording } from '../../core/wording/wording.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { sha256 } from '../../electron/host/hash.ts';
import { SAMPLES as LISTED, type Sample } from '../../renderer/samples/samples.ts';
import { launchBrowser, SAMPLES, sampleText, settled } from '../e2e/window.ts';
import type { Desktop } from './double/launch.ts';
import { heading, programs, type Programs } from './double/programs.ts';

let browser: Browser;
let started: Programs;
let desktop: Desktop;
let page: Page;
let folder: string;
const problems: string[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'saved-'));
  browser = await launchBrowser();
  started = programs(browser);
  desktop = await started.launch();
  page = await desktop.page();
  await page.locator('.bar').waitFor();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) problems.push(message.text());
  });
  page.on('pageerror', (error) => problems.push(error.message));
});
afterAll(async () => {
  await started.end();
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What the core says of a sample: the window must say the same, and nothing of its own. */
const documentOf = ({ logName, scheduleName }: Sample) => {
  const schedule = readSchedule(sampleText(scheduleName), scheduleName);
  const bytes = readFileSync(join(SAMPLES, logName));
  return analyze(bytes, logName, { schedule }, { guessEncoding, sha256: sha256(bytes) }).document;
};

const plain = (text: string): string => text.replace(/\u00a0/g, ' ');

const verdict = async (): Promise<string[]> =>
  (await page.locator('.verdict > p').allInnerTexts()).map(plain);

describe('every sample, one after the other in one desktop window', () => {
  test.each(LISTED)('$logName is opened, told and saved by the keyboard', async (sample) => {
    const { open, save } = desktop.control.answers;
    open.push([join(SAMPLES, sample.logName)], [join(SAMPLES, sample.scheduleName)]);
    await page.keyboard.press('Control+o');
    await heading(page, sample.logName).waitFor();
    await settled(page);
    await page.keyboard.press('s');
    const document = documentOf(sample);
    const words = wording(document, 'C');
    const told = [...words.verdict.map(({ text }) => plain(text)), plain(words.load.answer)];
    await vi.waitFor(async () => {
      expect(await verdict()).toEqual(told);
    }, 10_000);

    const path = join(folder, `${sample.logName}.html`);
    save.push(path);
    await page.keyboard.press('Control+s');
    await vi.waitFor(() => {
      expect(readFileSync(path, 'utf8')).toBe(htmlReport(document, 'C'));
    }, 10_000);
    expect(problems).toEqual([]);
    const { letOut, refused } = await desktop.shownWindow();
    expect([letOut, refused]).toEqual([[], []]);
  });
});
