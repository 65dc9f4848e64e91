import { z } from 'zod';
import { keptJson } from './kept-json.ts';

/** A place on the desktop, in its own pixels. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a window stands; without x and y, in the middle of the main display. */
export interface WindowPlace {
  readonly width: number;
  readonly height: number;
  readonly x?: number;
  readonly y?: number;
  readonly isMaximized: boolean;
}

/** The smallest window that the sheet is drawn for. */
export const SMALLEST = { width: 900, height: 600 } as const;

const FIRST = { width: 1280, height: 860 } as const;

/** So much of the window must be on a display for it to be found and moved (chosen). */
const VISIBLE_PX = 100;

const zPixels = z.number().int();
const zKept = z.strictObject({
  x: zPixels,
  y: zPixels,
  width: zPixels.positive(),
  height: zPixels.positive(),
  isMaximized: z.boolean(),
});
export type KeptPlace = z.infer<typeof zKept>;

const overlap = (from: number, length: number, otherFrom: number, otherLength: number): number =>
  Math.min(from + length, otherFrom + otherLength) - Math.max(from, otherFrom);

const showsOn = (place: Rectangle, display: Rectangle): boolean =>
  overlap(place.x, place.width, display.x, display.width) >= VISIBLE_PX &&
  overlap(place.y, place.height, display.y, display.height) >= VISIBLE_PX &&
  // The title bar, by which a window is moved, must not be above the display.
  place.y >= display.y;

const between = (wanted: number, least: number, most: number): number =>
  Math.min(Math.max(wanted, least), most);

const sizeOn = ({ width, height }: Pick<Rectangle, 'width' | 'height'>, display: Rectangle) => ({
  width: between(width, SMALLEST.width, display.width),
  height: between(height, SMALLEST.height, display.height),
});

/**
 * Fits the kept place to the displays that are there now: one that has been unplugged takes the
 * place with it, and no window is larger than its display or smaller than the sheet needs.
 *
 * @param displays the free areas of all displays, the main one first
 */
export const fitPlace = (
  kept: KeptPlace | null,
  [main, ...others]: readonly [Rectangle, ...Rectangle[]],
): WindowPlace => {
  if (kept === null) return { ...sizeOn(FIRST, main), isMaximized: false };
  const { isMaximized } = kept;
  for (const display of [main, ...others]) {
    const place = { x: kept.x, y: kept.y, ...sizeOn(kept, display) };
    if (showsOn(place, display)) return { ...place, isMaximized };
  }
  return { ...sizeOn(kept, main), isMaximized };
};

/** The place that the window last had. */
export const keptPlace = keptJson('window.json', zKept);
