import type { Locator, Page } from 'playwright-core';
import { analyze } from '../../core/analyze.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { guessEncoding } from '../../electron/host/encoding.ts';
import { sha256 } from '../../electron/host/hash.ts';
import type { HostedWindow, SavedFile } from './hosts.ts';
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

/** What comes on paper when the report is printed by its keys; the print dialog is closed again. */
export const printed = async (page: Page): Promise<string> => {
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset['printed'] = 'yes';
    };
  });
  await page.keyboard.press('Control+p');
  await page.locator('body[data-printed]').waitFor();
  await page.emulateMedia({ media: 'print' });
  const text = plain(await page.locator('body').innerText());
  const report = plain(await page.locator('.print-only > :visible').allInnerTexts().then(join));
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => {
    delete document.body.dataset['printed'];
    window.dispatchEvent(new Event('afterprint'));
  });
  return `${text} ${report}`;
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
    const { prototype } = CanvasRenderingContext2D;
    const { fillText, setLineDash } = prototype;
    prototype.fillText = function (text, ...rest) {
      painted.words.push(text);
      fillText.call(this, text, ...rest);
    };
    prototype.setLineDash = function (segments) {
      painted.dashes.push([...segments]);
      setLineDash.call(this, segments);
    };
  });
  return () => page.evaluate(() => Reflect.get(window, 'painted') as Painted);
};
