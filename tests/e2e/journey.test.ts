import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from 'vitest';
import { htmlReport } from '../../core/report/html-report.ts';
import { curveCsv, legsCsv } from '../../core/report/csv.ts';
import { analyze } from '../../core/analyze.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { sha256 } from '../../electron/host/hash.ts';
import { bigLog } from '../bench/big-log.ts';
import {
  dropFiles,
  launchBrowser,
  openWindow,
  readout,
  sampleFile,
  sampleText,
  settled,
  textFile,
  type TestWindow,
} from './window.ts';

let browser: Browser;
let window_: TestWindow;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(async () => browser.close());
beforeEach(async () => {
  window_ = await openWindow(browser);
  ({ page } = window_);
});
afterEach(async () => {
  expect(window_.problems).toEqual([]);
  expect(window_.strayRequests).toEqual([]);
  await window_.close();
});

const openSample = async (name: string): Promise<void> => {
  await page.getByRole('button', { name }).click();
  await settled(page);
};

const documentOf = (logName: string, scheduleName: string) => {
  const schedule = readSchedule(sampleText(scheduleName), scheduleName);
  const { bytes } = sampleFile(logName);
  return analyze(bytes, logName, { schedule }, { guessEncoding, sha256: sha256(bytes) }).document;
};

const textOf = async (download: Download): Promise<string> =>
  readFileSync(await download.path(), 'utf8');

/** What a part of the page says, a number and its unit with a plain space between. */
const said = async (selector: string): Promise<string> =>
  (await page.locator(selector).first().innerText()).replace(/\u00a0/g, ' ');

/** Chooses from the save menu and takes what is downloaded. */
const saved = async (item: string): Promise<Download> => {
  await page.getByRole('button', { name: 'Save' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('menuitem', { name: item }).click(),
  ]);
  return download;
};

/** The ends of the view, as the crosshair's first and last places in it. */
const viewWidth = async (): Promise<number> => {
  const surface = page.locator('#crosshair');
  const box = (await surface.boundingBox())!;
  const at = async (x: number): Promise<number> => {
    await page.mouse.move(x, box.y + 60);
    return Number(await surface.getAttribute('aria-valuenow'));
  };
  return (await at(box.x + box.width - 12)) - (await at(box.x + 60));
};

describe('from a sentence to its evidence', () => {
  test('a verdict’s sentence opens the note that it rests on, and dims the others', async () => {
    await openSample('overshoot.csv');
    await page.locator('.verdict a').nth(1).click();
    const open = page.locator('.note-open');
    expect(await said('.note-open .note-title')).toContain('The hold at 1210 °C');
    for (const part of ['measured', 'held against', 'What to do', 'What else it could be']) {
      expect(await open.innerText()).toContain(part);
    }
    expect(await open.innerText()).toContain('Caution.');
    expect(await page.locator('.note-dim').count()).toBe(2);
    expect(await page.getByRole('button', { name: 'Whole firing' }).isVisible()).toBe(true);
  });

  test('a letter on the curve opens its note, and the note closes again', async () => {
    await openSample('overshoot.csv');
    await page.locator('.letter-mark').first().click();
    expect(await page.locator('.note-head').first().getAttribute('aria-expanded')).toBe('true');
    await page.locator('.note-head').first().click();
    expect(await page.locator('.note-open').count()).toBe(0);
    await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
  });

  test('a sentence about the couple leads to the cautions', async () => {
    await openSample('good-bisque.csv');
    await page.locator('.verdict a').nth(2).click();
    expect(
      await page.locator('#cautions-title').evaluate((it) => it === document.activeElement),
    ).toBe(true);
  });
});

describe('the curve', () => {
  test('reads time, kiln, plan, difference and slope under the pointer, beside the data', async () => {
    await openSample('good-glaze.csv');
    const { curve, alignment } = documentOf('good-glaze.csv', 'good-glaze.schedule.csv');
    const box = (await page.locator('#crosshair').boundingBox())!;
    await page.mouse.move(box.x + box.width / 3, box.y + 100);
    const read = await readout(page);
    expect(Object.keys(read)).toEqual(['time', 'kiln', 'planned', 'difference', 'slope']);
    const at = Number(await page.locator('#crosshair').getAttribute('aria-valuenow'));
    const nearest = curve.atSeconds.reduce(
      (best, moment, i) =>
        Math.abs(moment - at) < Math.abs(curve.atSeconds[best]! - at) ? i : best,
      0,
    );
    expect(Math.abs(Number.parseFloat(read['kiln']!) - curve.celsius[nearest]!)).toBeLessThan(3);
    expect(alignment).not.toBeNull();
    const difference = Number.parseFloat(read['difference']!.replace('−', '-'));
    const planned = Number.parseFloat(read['planned']!);
    expect(Math.abs(Number.parseFloat(read['kiln']!) - planned - difference)).toBeLessThanOrEqual(
      1,
    );
  });

  test('comes closer with the wheel, moves along, and shows the whole again', async () => {
    await openSample('good-glaze.csv');
    const whole = await viewWidth();
    const box = (await page.locator('#crosshair').boundingBox())!;
    await page.mouse.move(box.x + box.width / 3, box.y + 100);
    for (let turn = 0; turn < 4; turn++) await page.mouse.wheel(0, -100);
    const close = await viewWidth();
    expect(close / whole).toBeGreaterThan(0.3);
    expect(close / whole).toBeLessThan(0.6);
    const tick = page.locator('.time-tick').first();
    const before = await tick.innerText();
    await page.mouse.wheel(200, 0);
    await page.waitForFunction(
      (text) => document.querySelector('.time-tick')?.textContent !== text,
      before,
    );
    await page.getByRole('button', { name: 'Whole firing' }).click();
    await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
    expect(await viewWidth()).toBeCloseTo(whole, -3);
  });

  test('brings up a stretch that is dragged across, and the whole on a double click', async () => {
    await openSample('good-glaze.csv');
    const whole = await viewWidth();
    const box = (await page.locator('#crosshair').boundingBox())!;
    await page.mouse.move(box.x + 200, box.y + 100);
    await page.mouse.down();
    await page.mouse.move(box.x + 300, box.y + 100, { steps: 4 });
    expect(await page.locator('.drawn-out').isVisible()).toBe(true);
    await page.mouse.up();
    await page.getByRole('button', { name: 'Whole firing' }).waitFor();
    await page.waitForTimeout(400);
    const share = (await viewWidth()) / whole;
    expect(share).toBeGreaterThan(0.08);
    expect(share).toBeLessThan(0.25);
    await page.mouse.dblclick(box.x + 250, box.y + 100);
    await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
  });

  test('is pinched closer with two fingers', async () => {
    await openSample('good-glaze.csv');
    const whole = await viewWidth();
    const box = (await page.locator('#crosshair').boundingBox())!;
    const touch = await page.context().newCDPSession(page);
    const fingers = (type: string, left: number, right: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type: type as 'touchStart',
        touchPoints:
          type === 'touchEnd'
            ? []
            : [
                { x: box.x + left, y: box.y + 100, id: 1 },
                { x: box.x + right, y: box.y + 100, id: 2 },
              ],
      });
    await fingers('touchStart', 300, 400);
    for (let step = 1; step <= 5; step++)
      await fingers('touchMove', 300 - step * 10, 400 + step * 10);
    await fingers('touchEnd', 0, 0);
    const share = (await viewWidth()) / whole;
    expect(share).toBeGreaterThan(0.35);
    expect(share).toBeLessThan(0.7);
  });
});

describe('files', () => {
  test('a log and its schedule are dropped together, the schedule known as one', async () => {
    await dropFiles(page, [sampleFile('overshoot.csv'), sampleFile('overshoot.schedule.json')]);
    await settled(page);
    expect(await page.locator('.sheet-head').innerText()).toContain('Stoneware glaze with hold');
  });

  test('a schedule dropped later changes the answer', async () => {
    await dropFiles(page, [sampleFile('power-cut.csv')]);
    await settled(page);
    expect(await said('.verdict')).toContain('No schedule was given');
    await dropFiles(page, [sampleFile('power-cut.schedule.json')]);
    await page.getByText('cone 6 meant').waitFor();
    await settled(page);
    expect(await said('.verdict')).toContain('On the climb to 1095 °C');
  });

  test('a log that cannot be read is shown with its line, its reason and what to try', async () => {
    await dropFiles(page, [textFile('cut-off.csv', 'time,temp\n')]);
    await page.getByRole('heading', { name: 'cut-off.csv could not be read' }).waitFor();
    const state = await said('.state');
    expect(state).toContain('Line 1');
    expect(state).toContain('time,temp');
    expect(state).toContain('What to try');
    await page.getByRole('button', { name: 'Back to the start' }).click();
    await page.getByRole('heading', { name: 'Drop the log of a firing here' }).waitFor();
  });

  test('the report, the curve and the legs are saved as the core writes them', async () => {
    await openSample('underfired-glaze.txt');
    const firing = documentOf('underfired-glaze.txt', 'underfired-glaze.schedule.json');
    const report = await saved('Report as HTML');
    expect(report.suggestedFilename()).toBe('underfired-glaze.report.html');
    expect(await textOf(report)).toBe(htmlReport(firing, 'C'));
    expect(await textOf(await saved('Curve as CSV'))).toBe(curveCsv(firing, 'C'));
    expect(await textOf(await saved('Legs as CSV'))).toBe(legsCsv(firing, 'C'));
  });

  test('the verdict is copied as text', async () => {
    await openSample('underfired-glaze.txt');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('menuitem', { name: 'Copy the verdict' }).click();
    await page.getByText('The verdict is on the clipboard.').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toContain(await said('.verdict > p'));
  });

  test('what is printed is the report, and the window comes back', async () => {
    await openSample('underfired-glaze.txt');
    await page.evaluate(() => {
      window.print = () => {
        document.body.dataset['printed'] = 'yes';
      };
    });
    await page.keyboard.press('Control+p');
    await page.locator('body[data-printed]').waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.print-only h1').innerText()).toBe('underfired-glaze.txt');
    expect(await page.locator('#root').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.print-only').count()).toBe(0);
    expect(await page.locator('#root').isVisible()).toBe(true);
  });
});

describe('a large log', () => {
  test('is read while the window answers, and the reading can be stopped', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'afterfire-log-'));
    const file = join(folder, 'large.csv');
    writeFileSync(file, bigLog(1_000_000));
    await openSample('good-bisque.csv');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open a log' }).first().click(),
    ]);
    await chooser.setFiles(file);
    await page.getByRole('heading', { name: 'Reading large.csv' }).waitFor();
    await page.keyboard.press('u');
    expect(
      await page.getByRole('button', { name: 'Degrees Fahrenheit' }).getAttribute('aria-pressed'),
    ).toBe('true');
    await page.getByRole('button', { name: 'Stop' }).click();
    await settled(page);
    expect(await said('.sheet-head')).toContain('good-bisque.csv');
    expect(await said('.sheet-head')).toContain('°F');
    // The worker was ended with the log: the sheet's own log is read again to answer.
    await page.getByRole('button', { name: 'Schedule and kiln' }).click();
    await page
      .locator('#told')
      .getByRole('button', { name: /Meant to reach/ })
      .click();
    await page.getByRole('option', { name: 'cone 9', exact: true }).click();
    await page.getByText('where cone 9 was meant').first().waitFor();
    rmSync(folder, { recursive: true });
  });
});

describe('what is told', () => {
  test('changes the answer at once', async () => {
    await openSample('good-glaze.csv');
    expect(await said('.verdict')).toContain('cone 6 as meant');
    await page.getByRole('button', { name: 'Schedule and kiln' }).click();
    await page
      .locator('#told')
      .getByRole('button', { name: /Meant to reach/ })
      .click();
    await page.getByRole('option', { name: 'cone 9', exact: true }).click();
    await page.getByText('where cone 9 was meant').first().waitFor();
  });
});
