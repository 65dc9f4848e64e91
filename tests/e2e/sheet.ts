import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { analyze } from '../../core/analyze.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { sha256 } from '../../electron/host/hash.ts';
import type { Deed, HostedWindow, SavedFile } from './hosts.ts';
import { sampleFile, sampleText, settled } from './window.ts';

/** Text with plain spaces, so that what is said can be held against what the core says. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** What the first such part of the page says. */
export const said = async (page: Page, selector: string): Promise<string> =>
  plain(await page.locator(selector).first().innerText());

/** What every such part of the page says. */
export const allSaid = async (parts: Locator): Promise<string[]> =>
  (await parts.allInnerTexts()).map(plain);

/** Tries a sample from the window's first page. */
export const trySample = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name }).click();
  await settled(page);
};

/** What the core makes of a sample: the window must say the same, and nothing of its own. */
export const documentOf = (
  logName: string,
  scheduleName: string | null,
  told: Options = {},
): AnalysisDocument => {
  const { bytes } = sampleFile(logName);
  const schedule =
    scheduleName === null ? {} : { schedule: readSchedule(sampleText(scheduleName), scheduleName) };
  return analyze(bytes, logName, { ...schedule, ...told }, { guessEncoding, sha256: sha256(bytes) })
    .document;
};

/** Chooses from the menu under Save. */
export const chooseToSave = async (page: Page, item: string): Promise<void> => {
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByRole('menuitem', { name: item }).click();
};

/** The file that an entry of the menu under Save comes to. */
export const savedBy = ({ page, save }: HostedWindow, item: string): Promise<SavedFile> =>
  save(() => chooseToSave(page, item));

/** What comes on paper when the report is printed; the print dialog is closed again. */
export const printed = async (
  page: Page,
  deed: Deed = () => page.keyboard.press('Control+p'),
): Promise<string> => {
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset['printed'] = 'yes';
    };
  });
  await deed();
  await page.locator('body[data-printed]').waitFor();
  await page.emulateMedia({ media: 'print' });
  // The report stands in a tree of its own; only what is visible there is printed.
  const text = await page
    .locator('.print-only')
    .evaluate((holder) =>
      [...(holder.shadowRoot?.children ?? [])]
        .map((part) => (part as HTMLElement).innerText)
        .join(' '),
    );
  expect(await page.locator('#root').isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => {
    delete document.body.dataset['printed'];
    window.dispatchEvent(new Event('afterprint'));
  });
  expect(await page.locator('.print-only').count()).toBe(0);
  expect(await page.locator('#root').isVisible()).toBe(true);
  return plain(text);
};

/** Chooses from the menu under View. */
export const chooseView = async (page: Page, item: string): Promise<void> => {
  await page.getByRole('button', { name: 'View' }).click();
  await page.getByRole('menuitem', { name: item, exact: true }).click();
};

/** Opens the panel of what can be told. */
export const tell = async (page: Page): Promise<Locator> => {
  await page.getByRole('button', { name: 'Schedule and kiln' }).click();
  return page.locator('#told');
};

/** Picks one of a list whose label is given, within a part of the page. */
export const pickFrom = async (within: Locator, label: RegExp, option: string): Promise<void> => {
  await within.getByRole('button', { name: label }).click();
  await within.page().getByRole('option', { name: option, exact: true }).click();
};

/** What is painted on canvases from now on: the words, and the lines that are dashed. */
export interface Painted {
  readonly words: readonly string[];
  readonly dashes: readonly (readonly number[])[];
}

/** Keeps what is painted from now on; gives a way to read it. */
export const watchPainting = async (page: Page): Promise<() => Promise<Painted>> => {
  await page.evaluate(() => {
    const painted = { words: [] as string[], dashes: [] as number[][] };
    Object.assign(window, { painted });
    const watch = (method: 'fillText' | 'setLineDash', note: (first: unknown) => void): void => {
      const { prototype } = CanvasRenderingContext2D;
      const original = Reflect.get(prototype, method) as (...sent: unknown[]) => void;
      Reflect.set(prototype, method, function (this: CanvasRenderingContext2D, ...sent: unknown[]) {
        note(sent[0]);
        original.apply(this, sent);
      });
    };
    watch('fillText', (text) => painted.words.push(text as string));
    watch('setLineDash', (segments) => painted.dashes.push([...(segments as number[])]));
  });
  return () => page.evaluate(() => Reflect.get(window, 'painted') as Painted);
};
