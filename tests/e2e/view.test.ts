import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Page } from 'playwright-core';
import { TEXT_STEPS } from '../../renderer/state/store.ts';
import { overBothHosts } from './hosts.ts';
import { outOfReach } from './room.ts';
import { chooseView, plain, savedBy, tell, trySample } from './sheet.ts';
import { wordsOf } from './unit-left.ts';
import { dropFiles, sampleFile, settled, textFile } from './window.ts';

/** How light the window's paper is, 0 to 255. */
const paperOf = (page: Page): Promise<number> =>
  page
    .locator('html')
    .evaluate((it) => Number(/\d+/.exec(getComputedStyle(it).backgroundColor)?.[0]));

const isLight = async (page: Page): Promise<boolean> => (await paperOf(page)) > 128;

const announced = async (page: Page): Promise<string> =>
  plain((await page.locator('#announcer').textContent()) ?? '');

overBothHosts(
  (window) => {
    let page: Page;
    beforeEach(() => {
      ({ page } = window());
    });

    describe('the theme', () => {
      test('follows the system until one is chosen, and is kept', async () => {
        expect(await isLight(page)).toBe(true);
        await page.emulateMedia({ colorScheme: 'dark' });
        expect(await isLight(page)).toBe(false);
        await chooseView(page, 'Light');
        await vi.waitFor(async () => {
          expect(await isLight(page)).toBe(true);
        });
        await chooseView(page, 'Dark');
        await page.emulateMedia({ colorScheme: 'light' });
        expect(await isLight(page)).toBe(false);
        await page.reload();
        await page.locator('.bar').waitFor();
        expect(await isLight(page)).toBe(false);
        await chooseView(page, 'As the system');
        await vi.waitFor(async () => {
          expect(await isLight(page)).toBe(true);
        });
      });

      test('changes the curve too', async () => {
        await trySample(page, 'good-bisque.csv');
        const picture = () =>
          page
            .locator('.lane-curve canvas')
            .evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL());
        const light = await picture();
        await chooseView(page, 'Dark');
        await vi.waitFor(async () => {
          expect(await picture()).not.toBe(light);
        }, 10_000);
      });
    });

    test('the unit is changed in the panel of what is told too, and is kept', async () => {
      await trySample(page, 'good-glaze.csv');
      const told = await tell(page);
      await told.getByRole('button', { name: 'Make one from a cone' }).click();
      const rate = told.getByLabel('Leg 2, rate');
      expect(await rate.inputValue()).toBe('175');
      await page.getByRole('button', { name: 'Degrees Fahrenheit' }).click();
      // 175 °C/h is 315 °F/h: a rate takes no 32.
      expect(await rate.inputValue()).toBe('315');
      expect((await wordsOf(page, '#telling')).filter((text) => text.includes('°C'))).toEqual([]);
      expect((await wordsOf(page, '#telling')).join()).toContain('°F/h');
      await page.reload();
      await page.getByRole('button', { name: 'Degrees Fahrenheit', pressed: true }).waitFor();
    });

    describe('room', () => {
      test('every size of text is a share of the reader’s own', async () => {
        for (const step of TEXT_STEPS) {
          await page.getByRole('button', { name: 'View' }).click();
          await page.getByRole('menuitem', { name: `Text at ${step} %` }).click();
          const rootPx = await page.evaluate(() =>
            Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
          );
          expect(rootPx).toBeCloseTo((16 * step) / 100, 1);
        }
      });

      test('leaves the curve the whole width, also where it was set before there was one', async () => {
        await page.setViewportSize({ width: 900, height: 600 });
        await chooseView(page, 'Text at 200 %');
        const curve = page.locator('.curve-frame');
        const openOne = async (): Promise<number> => {
          await dropFiles(page, [sampleFile('good-glaze.csv')]);
          await settled(page);
          return (await curve.boundingBox())?.width ?? 0;
        };
        expect(await openOne()).toBeGreaterThan(700);
        await page.reload();
        await page.locator('.empty-state').waitFor();
        expect(await openOne()).toBeGreaterThan(700);
      });

      test.each([
        { width: 900, height: 600, textPercent: 100 },
        { width: 900, height: 600, textPercent: 200 },
        { width: 1600, height: 1000, textPercent: 130 },
      ])('is enough at $width × $height, $textPercent %, in every part', async (size) => {
        await page.setViewportSize({ width: size.width, height: size.height });
        await page.getByRole('button', { name: 'View' }).click();
        await page.getByRole('menuitem', { name: `Text at ${size.textPercent} %` }).click();
        expect(await outOfReach(page)).toEqual([]);
        await page.keyboard.press('?');
        await page.getByRole('dialog').waitFor();
        expect(await outOfReach(page)).toEqual([]);
        await page.keyboard.press('Escape');
        await dropFiles(page, [textFile('cut-off.csv', 'time,temp\n')]);
        await page.getByRole('heading', { name: 'cut-off.csv could not be read' }).waitFor();
        expect(await outOfReach(page)).toEqual([]);
        await dropFiles(page, [sampleFile('overshoot.csv'), sampleFile('overshoot.schedule.json')]);
        await settled(page);
        const told = await tell(page);
        await told.getByRole('button', { name: 'Make one from a cone' }).click();
        await told.getByRole('button', { name: 'Add a cone that was seen' }).click();
        expect(await outOfReach(page)).toEqual([]);
      });

      test('would be found to be lacking', async () => {
        await trySample(page, 'good-bisque.csv');
        await page.locator('.sheet-head').evaluate((it) => {
          it.style.width = '4rem';
          it.style.whiteSpace = 'nowrap';
          it.style.overflow = 'hidden';
        });
        expect((await outOfReach(page)).join()).toContain('good-bisque.csv');
        await page.locator('.legend').evaluate((it) => {
          it.style.width = '5000px';
        });
        expect((await outOfReach(page)).join()).toContain('px too wide');
      });
    });

    describe('for a screen reader', () => {
      test('every part has its name', async () => {
        await trySample(page, 'underfired-glaze.txt');
        const named = [
          ['region', 'Verdict'],
          ['region', 'The curve'],
          ['region', 'Evidence'],
          ['region', 'Heat-work'],
          ['region', 'How the log was read'],
          ['region', 'Cautions'],
          ['slider', 'Crosshair on the curve'],
          ['img', /^The cone pack: cone .* predicted .*; cone .* predicted .*; cone .* predicted/],
          ['img', /^Dose of cone 6 against time/],
          ['table', 'Planned and driven, leg by leg'],
          ['table', 'Where the heat-work came from'],
          ['table', 'On the way up'],
          ['table', 'On the way down'],
          ['table', /^What was decided/],
          ['table', /^What was looked for/],
        ] as const;
        for (const [role, name] of named) {
          expect(await page.getByRole(role, { name }).count(), `${role} ${name}`).toBeGreaterThan(
            0,
          );
        }
        const about = plain((await page.locator('#curve-description').textContent()) ?? '');
        expect(about).toMatch(/^Leg 1, .*: .*\./);
        expect(about).toContain('A: ');
      });

      test('what happens is said without the focus being moved', async () => {
        const heard: string[] = [];
        await page.exposeFunction('hear', (text: string) => void heard.push(plain(text)));
        await page.evaluate(() => {
          const announcer = document.getElementById('announcer')!;
          new MutationObserver(() => {
            (Reflect.get(globalThis, 'hear') as (text: string) => void)(announcer.textContent);
          }).observe(announcer, { characterData: true, childList: true, subtree: true });
        });
        const announcer = page.locator('#announcer');
        expect(await announcer.getAttribute('aria-live')).toBe('polite');
        await dropFiles(page, [sampleFile('overshoot.csv')]);
        await settled(page);
        const focus = await page.evaluate(() => document.activeElement?.id);
        await dropFiles(page, [sampleFile('overshoot.schedule.json')]);
        await page.getByText('cone 6 meant').waitFor();
        await settled(page);
        expect(await announced(page)).toContain('where cone 6 was meant');
        expect(await page.evaluate(() => document.activeElement?.id)).toBe(focus);
        await page.keyboard.press('u');
        const { savedAs } = await savedBy(window(), 'Report as HTML');
        await vi.waitFor(() => {
          expect(heard.at(-1)).toBe(`Saved ${savedAs}.`);
        });
        expect(heard[0]).toBe('Reading overshoot.csv.');
        expect(heard[1]).toContain('No schedule was given');
        expect(heard).toContain('Degrees Fahrenheit.');
      });
    });

    test('severity is told by shape and by word, a departing leg by its word and its border', async () => {
      await trySample(page, 'underfired-glaze.txt');
      const marks = await page.locator('.note').evaluateAll((notes) =>
        notes.map((note) => {
          const shape = note.querySelector('.severity-shape > :not(text)')!;
          const isFilled = getComputedStyle(shape).fillOpacity !== '0';
          const paper = getComputedStyle(document.documentElement).backgroundColor;
          const isOpen = !isFilled || [paper, 'none'].includes(getComputedStyle(shape).fill);
          return {
            word: note.querySelector('.severity-word')?.textContent ?? '',
            shape: `${shape.tagName} ${isOpen ? 'open' : 'filled'}`,
          };
        }),
      );
      const shapeOf = new Map(marks.map(({ word, shape }) => [word, shape]));
      expect(shapeOf.size).toBeGreaterThan(1);
      expect(new Set(shapeOf.values()).size).toBe(shapeOf.size);
      expect(new Set(marks.map(({ word, shape }) => `${word} ${shape}`)).size).toBe(shapeOf.size);
      const borders = await page
        .locator('.ribbon-row:last-child .leg')
        .evaluateAll((legs) =>
          legs.map((leg) => [
            leg.classList.contains('leg-departs'),
            getComputedStyle(leg).borderTopWidth,
          ]),
        );
      expect(borders).toContainEqual([true, '2px']);
      for (const [departs, width] of borders) expect(width).toBe(departs ? '2px' : '1px');
      const departing = page.locator('.legs-table tr.departs');
      expect(await departing.count()).toBeGreaterThan(0);
      for (const verdict of await departing.locator('td').last().allInnerTexts()) {
        expect(verdict).not.toBe('as planned');
      }
    });

    describe('motion', () => {
      /** In how many places the first mark of the clock stood on the way to a chosen finding. */
      const placesOnTheWay = (): Promise<number> =>
        page.evaluate(async () => {
          const places = new Set<string>();
          const note = () =>
            places.add(document.querySelector<HTMLElement>('.time-tick')?.style.left ?? '');
          note();
          document.querySelector<HTMLElement>('.note-head')!.click();
          const begin = performance.now();
          while (performance.now() - begin < 600) {
            await new Promise((next) => requestAnimationFrame(next));
            note();
          }
          return places.size;
        });

      test('shows where the view went, and there is none if the system says so', async () => {
        await trySample(page, 'overshoot.csv');
        await page.emulateMedia({ reducedMotion: 'reduce' });
        expect(await placesOnTheWay()).toBeLessThanOrEqual(2);
        expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
        await page.keyboard.press('Escape');
        await page.getByRole('button', { name: 'Whole firing' }).waitFor({ state: 'detached' });
        await page.emulateMedia({ reducedMotion: 'no-preference' });
        expect(await placesOnTheWay()).toBeGreaterThan(2);
      });
    });
  },
  { context: { colorScheme: 'light', reducedMotion: 'reduce' } },
);
