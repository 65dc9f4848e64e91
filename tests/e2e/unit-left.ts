import type { Page } from 'playwright-core';

/** Everything that a part of the page says: to the eye, to a screen reader, under the pointer. */
export const wordsOf = (page: Page, selector: string): Promise<string[]> =>
  page.locator(selector).evaluate((part) => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) texts.push(walker.currentNode.textContent ?? '');
    for (const element of part.querySelectorAll('*')) {
      for (const name of ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'alt']) {
        texts.push(element.getAttribute(name) ?? '');
      }
    }
    return texts.filter((text) => text.trim() !== '');
  });

/**
 * What is still said in °C on the sheet, with every note opened once. How the log was read may name
 * °C as the unit that stands in the file, and quote the file; it may give no number in it.
 */
export const celsiusLeftIn = async (page: Page): Promise<string[]> => {
  const seen = new Set<string>();
  const look = async (): Promise<void> => {
    for (const text of await wordsOf(page, 'main')) seen.add(text);
  };
  await look();
  for (const note of await page.locator('.note-head').all()) {
    await note.click();
    await look();
  }
  await page.keyboard.press('Escape');
  const ofTheFile = new Set(await wordsOf(page, '#reading'));
  return [...seen].filter((text) =>
    ofTheFile.has(text) ? /\d\s?°C/.test(text) : /°\s?C|Celsius/.test(text),
  );
};
