import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { trySample, watchPainting } from './sheet.ts';
import { readout, settled } from './window.ts';

interface Surface {
  readonly page: Page;
  readonly surface: Locator;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

const surfaceOf = async (page: Page): Promise<Surface> => {
  const surface = page.locator('#crosshair');
  const { x, y, width } = (await surface.boundingBox())!;
  return { page, surface, x, y: y + 100, width };
};

/** The moment that the crosshair is on, in seconds. */
const moment = async (page: Page): Promise<number> =>
  Number(await page.locator('#crosshair').getAttribute('aria-valuenow'));

/** The moments at the left and right end of what is in view, read off under the pointer. */
const viewOf = async ({ page, x, y, width }: Surface): Promise<[from: number, to: number]> => {
  await page.mouse.move(x + 60, y);
  const from = await moment(page);
  await page.mouse.move(x + width - 12, y);
  return [from, await moment(page)];
};

const widthOf = async (on: Surface): Promise<number> => {
  const [from, to] = await viewOf(on);
  return to - from;
};

const wholeButton = (page: Page) => page.getByRole('button', { name: 'Whole firing' });

overBothHosts(
  (window) => {
    let page: Page;
    let on: Surface;
    beforeEach(async () => {
      ({ page } = window());
      await trySample(page, 'good-glaze.csv');
      on = await surfaceOf(page);
    });

    const showWhole = async (): Promise<void> => {
      await wholeButton(page).click();
      await wholeButton(page).waitFor({ state: 'detached' });
    };

    describe('zoom', () => {
      test('by the wheel, about the pointer; the button shows the whole again', async () => {
        const whole = await widthOf(on);
        await page.mouse.move(on.x + on.width / 3, on.y);
        const under = await moment(page);
        for (let turn = 0; turn < 4; turn++) await page.mouse.wheel(0, -100);
        await wholeButton(page).waitFor();
        await page.mouse.move(on.x + on.width / 3 + 1, on.y);
        expect(Math.abs((await moment(page)) - under) / whole).toBeLessThan(0.01);
        const close = await widthOf(on);
        expect(close / whole).toBeGreaterThan(0.3);
        expect(close / whole).toBeLessThan(0.6);
        await showWhole();
        expect((await widthOf(on)) / whole).toBeCloseTo(1, 2);
      });

      test('by dragging across a stretch, which is drawn out; a double click shows the whole', async () => {
        const whole = await widthOf(on);
        await page.mouse.move(on.x + 200, on.y);
        await page.mouse.down();
        await page.mouse.move(on.x + 300, on.y, { steps: 4 });
        expect(await page.locator('.drawn-out').isVisible()).toBe(true);
        await page.mouse.up();
        await wholeButton(page).waitFor();
        const share = (await widthOf(on)) / whole;
        expect(share).toBeGreaterThan(0.08);
        expect(share).toBeLessThan(0.25);
        await page.mouse.dblclick(on.x + 250, on.y);
        await wholeButton(page).waitFor({ state: 'detached' });
      });

      test('by pinching with two fingers', async () => {
        const whole = await widthOf(on);
        const touch = await page.context().newCDPSession(page);
        const fingers = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...at: number[]) =>
          touch.send('Input.dispatchTouchEvent', {
            type,
            touchPoints: at.map((place, id) => ({ x: on.x + place, y: on.y, id })),
          });
        await fingers('touchStart', 300, 400);
        for (const step of [10, 20, 30, 40, 50]) {
          await fingers('touchMove', 300 - step, 400 + step);
        }
        await fingers('touchEnd');
        const share = (await widthOf(on)) / whole;
        expect(share).toBeGreaterThan(0.35);
        expect(share).toBeLessThan(0.7);
      });

      test('by the keys + and −, about the crosshair; 0 shows the whole', async () => {
        const whole = await widthOf(on);
        await page.keyboard.press('c');
        for (const key of ['+', '+', 'ArrowUp']) await page.keyboard.press(key);
        const close = await widthOf(on);
        expect(close / whole).toBeCloseTo(0.7 ** 3, 1);
        await page.keyboard.press('-');
        expect((await widthOf(on)) / close).toBeCloseTo(1 / 0.7, 1);
        await page.keyboard.press('0');
        await wholeButton(page).waitFor({ state: 'detached' });
      });
    });

    describe('pan', () => {
      const closer = async (): Promise<[number, number]> => {
        await page.mouse.move(on.x + on.width / 2, on.y);
        for (let turn = 0; turn < 5; turn++) await page.mouse.wheel(0, -100);
        await wholeButton(page).waitFor();
        return viewOf(on);
      };

      test.each([
        ['turning the wheel sideways', () => page.mouse.wheel(200, 0), 1],
        [
          'turning the wheel with Shift',
          async () => {
            await page.keyboard.down('Shift');
            await page.mouse.wheel(0, 200);
            await page.keyboard.up('Shift');
          },
          1,
        ],
        [
          'dragging with Shift',
          async () => {
            await page.keyboard.down('Shift');
            await page.mouse.down();
            await page.mouse.move(on.x + on.width - 300, on.y, { steps: 4 });
            await page.mouse.up();
            await page.keyboard.up('Shift');
          },
          1,
        ],
        [
          'Shift and an arrow',
          async () => {
            await page.keyboard.press('c');
            await page.keyboard.press('Shift+ArrowLeft');
          },
          -1,
        ],
      ] as const)('by %s', async (_name, deed, way) => {
        const [from, to] = await closer();
        const tick = page.locator('.time-tick').first();
        const before = await tick.innerText();
        await deed();
        await page.waitForFunction(
          (text) => document.querySelector<HTMLElement>('.time-tick')?.innerText !== text,
          before,
        );
        const [nowFrom, nowTo] = await viewOf(on);
        expect((nowFrom - from) * way).toBeGreaterThan(0.05 * (to - from));
        expect((nowTo - nowFrom) / (to - from)).toBeCloseTo(1, 1);
      });
    });

    test('the crosshair goes by keys, step by step, far, and to both ends', async () => {
      const surface = on.surface;
      const first = Number(await surface.getAttribute('aria-valuemin'));
      const last = Number(await surface.getAttribute('aria-valuemax'));
      await page.keyboard.press('c');
      await page.keyboard.press('Home');
      expect(await moment(page)).toBe(first);
      await page.keyboard.press('PageDown');
      const far = (await moment(page)) - first;
      expect(far / (last - first)).toBeCloseTo(1 / 20, 2);
      await page.keyboard.press('ArrowRight');
      expect(((await moment(page)) - first - far) / (last - first)).toBeCloseTo(1 / 200, 2);
      await page.keyboard.press('End');
      expect(await moment(page)).toBe(last);
      // What is read stands in the margin, and nowhere over the data.
      const read = Object.values(await readout(page));
      expect(read).toHaveLength(5);
      const margin = (await page.locator('.readout').boundingBox())!;
      expect(margin.y + margin.height).toBeLessThanOrEqual((await on.surface.boundingBox())!.y);
      expect(await page.locator('.crosshair').count()).toBe(1);
    });

    test('the ware’s phases are bands with names, and the plan is dashed', async () => {
      const painted = await watchPainting(page);
      await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
      await settled(page);
      const { words, dashes } = await painted();
      for (const phase of ['candling', 'bound water', 'burnout', 'quartz']) {
        expect(words).toContain(phase);
      }
      expect(dashes.some(([on_ = 0, off = 0]) => on_ > 0 && off > 0)).toBe(true);
      // The scale is in °F: a cone 6 firing goes past 2000 °F and never near 2000 °C.
      expect(words).toContain('2000');
    });
  },
  { context: { reducedMotion: 'reduce', hasTouch: true } },
);
