import type { Page } from 'playwright-core';

/**
 * The words on the page that nobody can get to see whole: cut off by what holds them, or wider than
 * the window. What can be scrolled to is no loss; only the page itself must not scroll sideways,
 * which is said too.
 */
export const outOfReach = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const SLACK_PX = 1.5;
    // The box of a line is taller than its letters.
    const BLANK_SHARE = 0.15;
    const { documentElement: root } = document;
    const lost: string[] = [];
    if (root.scrollWidth > root.clientWidth) {
      lost.push(`the page is ${root.scrollWidth - root.clientWidth} px too wide`);
    }
    const isIn = (part: DOMRect, whole: { left: number; right: number }): boolean =>
      part.left >= whole.left - SLACK_PX && part.right <= whole.right + SLACK_PX;
    const isHigh = (part: DOMRect, whole: { top: number; bottom: number }): boolean => {
      const blank = BLANK_SHARE * part.height;
      return part.top >= whole.top - blank && part.bottom <= whole.bottom + blank;
    };

    const isReached = (text: DOMRect, from: Element): boolean => {
      let sideways = true;
      for (let holder: Element | null = from; holder && holder !== root;) {
        const { overflowX, overflowY, position } = getComputedStyle(holder);
        const box = holder.getBoundingClientRect();
        const cuts = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
        const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
        if (sideways && cuts(overflowX) && !isIn(text, box)) return false;
        if (cuts(overflowY) && !isHigh(text, box)) return false;
        if (scrolls(overflowX)) sideways = false;
        if (scrolls(overflowY) || position === 'fixed') break;
        holder = holder.parentElement;
      }
      return !sideways || isIn(text, { left: 0, right: root.clientWidth });
    };

    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      const holder = node.parentElement;
      if (!holder || node.textContent?.trim() === '' || holder.closest('.unseen, svg')) continue;
      if (!holder.checkVisibility({ visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const rect of range.getClientRects()) {
        if (rect.width > 0 && !isReached(rect, holder)) {
          lost.push(`${holder.className || holder.tagName}: ${node.textContent ?? ''}`);
          break;
        }
      }
    }
    return lost;
  });
