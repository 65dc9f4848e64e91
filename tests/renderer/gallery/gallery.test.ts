import { AxeBuilder } from '@axe-core/playwright';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Options } from '../../../core/model/options.ts';
import { theBrowser } from '../../browser/find-browser.ts';
import { serveGallery, type ServedGallery } from './served-gallery.ts';

let gallery: ServedGallery | undefined;
let browser: Browser | undefined;
let context: BrowserContext;
let complaints: string[];

beforeAll(async () => {
  [gallery, browser] = await Promise.all([
    serveGallery(),
    chromium.launch({ executablePath: theBrowser(), args: ['--no-sandbox'] }),
  ]);
  context = await browser.newContext({ viewport: { width: 900, height: 600 } });
});

afterAll(async () => {
  await browser?.close();
  await gallery?.close();
});

/** Opens one state of the gallery; whatever the page complains of is kept. */
const open = async (query: string): Promise<Page> => {
  complaints = [];
  const page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${gallery!.address}?${query}`);
  await page.waitForSelector('html[data-ready]');
  return page;
};

const violations = async (page: Page): Promise<string[]> => {
  const found = await new AxeBuilder({ page }).analyze();
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
};

/** How many pixels wider than the window the page is. */
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** What the page told last. */
const told = async (page: Page, what = 'options'): Promise<Options> => {
  const text = await page.locator('html').getAttribute(`data-${what}`);
  return JSON.parse(text ?? '{}') as Options;
};

const DOCUMENTS = [
  ...['good-firing', 'no-schedule', 'troubled-firing', 'two-zones'],
  'sample-failing-couple',
];

const access = async (query: string): Promise<void> => {
  const page = await open(query);
  expect([query, await violations(page)]).toEqual([query, []]);
  expect([query, await overflow(page)]).toEqual([query, 0]);
  expect([query, complaints]).toEqual([query, []]);
  await page.close();
};

describe('all panels', () => {
  it.each(DOCUMENTS)('break no rule of access and fit at 900 px: %s', (document) =>
    access(`document=${document}&seen&unit=F`),
  );

  it('do so in the dark, and with text at 200 %', async () => {
    await access('document=troubled-firing&theme=dark&seen&refused');
    await access('document=two-zones&text=200&seen');
  });
});

describe('the schedule', () => {
  it('is typed by keyboard alone, drawn as it is typed, and told once it is whole', async () => {
    const page = await open('panel=told&document=no-schedule');
    await page.getByRole('button', { name: 'Type one' }).press('Enter');
    await expect.poll(() => page.getByLabel('Leg 1, rate').count()).toBe(1);
    await page.getByLabel('Leg 1, rate').focus();
    await page.keyboard.type('100');
    await page.keyboard.press('Tab');
    await page.keyboard.type('1000');
    const curve = page.getByRole('img', { name: /The schedule as a curve/ });
    await expect.poll(() => curve.getAttribute('aria-labelledby')).not.toBeNull();
    expect(await page.locator('.told-curve title').textContent()).toContain('up to 1000 °C');
    await page.getByRole('button', { name: 'Add a leg' }).press('Enter');
    // The new leg's first field has the focus.
    await page.keyboard.type('60');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2200');
    expect(await page.locator('.field-wrong').textContent()).toContain('at most at 1500 °C');
    expect(await page.getByRole('status').textContent()).toContain('Leg 2 is not finished.');
    await page.getByLabel('Leg 2, target').fill('1200');
    await expect
      .poll(async () => (await told(page)).schedule?.segments)
      .toEqual([
        { rateCPerHour: 100, minutes: null, targetC: 1000, holdMinutes: 0 },
        { rateCPerHour: 60, minutes: null, targetC: 1200, holdMinutes: 0 },
      ]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('is chosen from those at hand, made from a cone, saved, and taken away', async () => {
    const page = await open('panel=told&document=no-schedule');
    await page.getByRole('button', { name: 'Choose' }).press('Enter');
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await told(page)).schedule?.name).toBe('Slow bisque');
    await page.getByRole('button', { name: 'Make one from a cone' }).press('Enter');
    await page.getByLabel('Hold at the top').fill('15');
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Use this schedule' }).press('Enter');
    await expect.poll(async () => (await told(page)).schedule?.name).toBe('Cone 04');
    expect((await told(page)).schedule?.segments.at(-1)?.holdMinutes).toBe(15);
    await page.getByRole('button', { name: 'Save as CSV' }).press('Enter');
    expect(await told(page, 'saved')).toMatchObject({
      fileName: 'Cone 04.schedule.csv',
      kind: 'text/csv',
    });
    await page.getByRole('button', { name: 'take the schedule away' }).press('Enter');
    await expect.poll(async () => (await told(page)).schedule).toBeUndefined();
    await page.close();
  });

  it('says which line of a refused file is to blame', async () => {
    const page = await open('panel=told&document=no-schedule&refused');
    expect(await page.getByRole('alert').textContent()).toMatch(/glaze\.schedule\.csv.*line 4/);
    await page.close();
  });
});

describe('witness cones', () => {
  it('are told with where they stood and how far down, by keys and by the pointer', async () => {
    const page = await open('panel=told&document=good-firing');
    await page.getByRole('button', { name: 'Add a cone that was seen' }).press('Enter');
    await page.getByLabel('Where it stood').fill('top shelf');
    const bend = page.getByRole('slider');
    await bend.press('PageUp');
    await bend.press('ArrowUp');
    expect(await bend.getAttribute('aria-valuetext')).toBe('bent 16°');
    expect((await told(page)).observedCones).toBeUndefined();
    await page.getByRole('button', { name: 'Add this cone' }).press('Enter');
    const cone = { cone: '6', place: 'top shelf' };
    await expect
      .poll(async () => (await told(page)).observedCones)
      .toEqual([{ ...cone, bendDegrees: 16 }]);

    const box = (await bend.locator('svg').boundingBox())!;
    await page.mouse.move(box.x + box.width * 0.4, box.y + box.height * 0.2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height * 0.6, { steps: 4 });
    await page.mouse.up();
    await expect
      .poll(async () => (await told(page)).observedCones?.[0]?.bendDegrees)
      .toBeGreaterThan(45);
    await page.close();
  });
});

describe('numbers that may be left out', () => {
  it('are told once they can be, and what cannot be is said beside the field', async () => {
    const page = await open('panel=told&document=good-firing&unit=F&seen');
    const offset = page.getByLabel('Offset already in the readings');
    await offset.fill('500');
    expect(await page.locator('.field-wrong').textContent()).toContain('More than 180 °F');
    expect((await told(page)).couple?.offsetC).toBeUndefined();
    await offset.fill('-9');
    // A difference of 9 °F is 5 °C.
    await expect.poll(async () => (await told(page)).couple?.offsetC).toBeCloseTo(-5, 9);
    expect(await offset.inputValue()).toBe('-9');
    await offset.fill('');
    await expect.poll(async () => (await told(page)).couple?.offsetC).toBeUndefined();
    await page.close();
  });
});

describe('the other panels', () => {
  it('bring a leg and a part of the heat-work into view', async () => {
    const legs = await open('panel=legs&document=troubled-firing');
    await legs.getByRole('button', { name: /Hold at 1188/ }).press('Enter');
    expect(await told(legs, 'stretch')).toHaveProperty('fromSeconds');
    await legs.close();
    const cones = await open('panel=cones&document=troubled-firing');
    await cones.getByRole('button', { name: /^Hold, / }).press('Enter');
    expect(await told(cones, 'stretch')).toHaveProperty('toSeconds');
    await cones.close();
  });

  it('draw only the rejected rows in sight, and reach the last by scrolling', async () => {
    const page = await open('panel=reading&document=sample-failing-couple');
    const table = page.getByRole('table', { name: /Rejected rows/ });
    const rows = Number(await table.getAttribute('aria-rowcount')) - 1;
    const drawn = await table.getByRole('row').count();
    expect(rows).toBeGreaterThan(30);
    expect(drawn).toBeLessThan(rows);
    await table.press('End');
    await expect.poll(() => table.locator(`[aria-rowindex="${rows + 1}"]`).count()).toBe(1);
    await page.close();
  });

  it('put a guess of the reader right', async () => {
    const page = await open('panel=reading&document=no-schedule');
    await page.getByRole('button', { name: /Temperatures are in/ }).press('Enter');
    await page.getByRole('option', { name: 'Degrees Fahrenheit' }).press('Enter');
    await expect.poll(async () => (await told(page)).reading).toEqual({ unit: 'F' });
    await page.getByRole('button', { name: 'read it as before' }).press('Enter');
    await expect.poll(async () => (await told(page)).reading).toBeUndefined();
    await page.close();
  });

  it('show one outcome of the checks at a time', async () => {
    const page = await open('panel=reading&document=troubled-firing');
    const table = page.getByRole('table', { name: /What was looked for/ });
    const all = await table.getByRole('row').count();
    await page.getByRole('radio', { name: /^found/ }).check({ force: true });
    const found = await table.getByRole('row').count();
    expect(found).toBeLessThan(all);
    expect(found).toBe((await table.getByRole('cell', { name: 'found', exact: true }).count()) + 1);
    await page.close();
  });
});
