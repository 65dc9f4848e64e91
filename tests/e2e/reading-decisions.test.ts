import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { dropFiles, textFile } from './window.ts';

const pad = (value: number): string => String(value).padStart(2, '0');
const rowsOf = (count: number, row: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => row(i)).join('\n');

const MINUTES = `minute,temp\n${rowsOf(200, (i) => `${i},${20 + 5 * i}`)}`;
const CLOCK = `time,temp C\n${rowsOf(200, (i) => `${8 + Math.floor(i / 60)}:${pad(i % 60)},${20 + 5 * i}`)}`;
const DATED = `when,temp C\n${rowsOf(200, (i) => `03/04/2026 ${pad(Math.floor(i / 60))}:${pad(i % 60)},${20 + 5 * i}`)}`;
const VOLTS = `minute,couple mV type K\n${rowsOf(200, (i) => `${i},${(0.8 + 0.2 * i).toFixed(3)}`)}`;
const COLUMNS = `minute,kiln C,shelf C,other\n${rowsOf(200, (i) => `${i},${20 + 5 * i},${25 + 4 * i},${i % 7}`)}`;
const TITLED = `of the shed kiln\nminute,temp C\n${rowsOf(200, (i) => `${i},${20 + 5 * i}`)}`;
const BARE = `Sample interval: 60 s\ntemp C\n${rowsOf(200, (i) => `${20 + 5 * i}`)}`;
const MARKED = `minute,temp C\n${rowsOf(200, (i) => `${i},${i % 50 === 7 ? 777 : 20 + 5 * i}`)}`;
const BLANKS = `minute  temp\n${rowsOf(200, (i) => `${String(i).padEnd(6)}  ${20 + 5 * i}`)}`;
const COMMAS = `minute;temp C\n${rowsOf(200, (i) => `${i};${20 + 5 * i},125`)}`;

const desk = (page: Page) => page.locator('#desk');
const choose = async (page: Page, label: RegExp, option: RegExp): Promise<void> => {
  await desk(page).getByRole('button', { name: label }).click();
  await page.getByRole('option', { name: option }).click();
};
const fill = (page: Page, label: string, text: string): Promise<void> =>
  desk(page).getByLabel(label).fill(text);

interface Case {
  readonly what: string;
  readonly text: string;
  readonly change: (page: Page) => Promise<void>;
  /** What then stands on the sheet, the desk or below it, and did not before. */
  readonly shows: RegExp;
}

const CASES: readonly Case[] = [
  {
    what: 'the delimiter',
    text: BLANKS,
    change: (page) => choose(page, /Cells are parted by/, /fixed width/),
    shows: /parted by fixed widths/,
  },
  {
    what: 'the decimal mark',
    text: COMMAS,
    change: (page) => choose(page, /The decimal mark is/, /a point/),
    shows: /So it cannot be read: The readings run from 20125/i,
  },
  {
    what: 'the header line',
    text: TITLED,
    change: (page) => choose(page, /The columns are named on/, /no line/),
    shows: /“column 2”/,
  },
  {
    what: 'the unit',
    text: MINUTES,
    change: (page) => choose(page, /Readings are in/, /Fahrenheit/),
    shows: /peak 546\s°C/,
  },
  {
    what: 'the couple',
    text: VOLTS,
    change: (page) => choose(page, /Couple that gave millivolts/, /type N/),
    shows: /peak 1131\s°C/,
  },
  {
    what: 'the cold junction',
    text: VOLTS,
    change: (page) => fill(page, 'Its cold end stood at', '60'),
    shows: /peak 1045\s°C/,
  },
  {
    what: 'the order of day and month',
    text: DATED,
    change: (page) => choose(page, /Dates are written/, /^month/),
    shows: /It began 2026-03-04/,
  },
  {
    what: 'the zone',
    text: DATED,
    change: (page) => fill(page, 'The clock’s zone', 'Europe/Berlin'),
    shows: /Times are those of the zone Europe\/Berlin/,
  },
  {
    what: 'what bare numbers count',
    text: MINUTES,
    change: (page) => choose(page, /Bare numbers count/, /^seconds$/),
    shows: /^3 min logged/m,
  },
  {
    what: 'what they count from',
    text: MINUTES,
    change: async (page) => {
      await choose(page, /Bare numbers count/, /minutes$/);
      await choose(page, /They count from/, /1970/);
    },
    shows: /1 January 1970/,
  },
  {
    what: 'the interval',
    text: BARE,
    change: (page) => fill(page, 'Without times, a row every', '120'),
    shows: /6 h 38 min logged/,
  },
  {
    what: 'the first day',
    text: CLOCK,
    change: (page) => fill(page, 'Without a date, it began on', '2026-03-14'),
    shows: /It began 2026-03-14/,
  },
  {
    what: 'the marks of no reading',
    text: MARKED,
    change: (page) => fill(page, 'These mean no reading, too', '777'),
    shows: /200 rows read: 196 rows kept, 4 rows rejected/,
  },
  {
    what: 'the column of the temperature',
    text: COLUMNS,
    change: (page) => choose(page, /shelf C is taken for/, /the kiln’s temperature/),
    shows: /peak 821\s°C/,
  },
  {
    what: 'the role of another column',
    text: COLUMNS,
    change: (page) => choose(page, /shelf C is taken for/, /the setpoint/),
    shows: /setpoint[^\n]*shelf C/i,
  },
];

const sheet = (page: Page): Promise<string> => page.locator('main').innerText();

overBothHosts((window) => {
  test.each(CASES)(
    '$what is changed, its effect shown, and taken back',
    async ({ text, change, shows }) => {
      const { page } = window();
      await dropFiles(page, [textFile('any.csv', text)]);
      await page.getByRole('heading', { level: 1, name: 'any.csv' }).waitFor();
      await page.locator('main [aria-busy="false"]').first().waitFor();
      if ((await desk(page).count()) === 0) await page.keyboard.press('d');
      await desk(page)
        .getByRole('table', { name: /line by line/ })
        .waitFor();
      await desk(page).getByRole('button', { name: 'every decision' }).click();
      expect(await sheet(page)).not.toMatch(shows);
      await change(page);
      await expect.poll(() => sheet(page), { timeout: 15_000 }).toMatch(shows);
      const back = desk(page).getByRole('button', { name: 'read all of it as the file says' });
      await back.click();
      await back.waitFor({ state: 'detached' });
      await expect.poll(() => sheet(page), { timeout: 15_000 }).not.toMatch(shows);
    },
  );
});
