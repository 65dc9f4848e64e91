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

const FIRST: WindowPlace = { width: 1280, height: 860, isMaximized: false };

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

/**
 * Fits the kept place to the displays that are there now: one that has been unplugged takes the
 * place with it, and no window is larger than its display or smaller than the sheet needs.
 *
 * @param displays the free areas of all displays, the main one first
 */
export const fitPlace = (kept: KeptPlace | null, displays: readonly Rectangle[]): WindowPlace => {
  const [main] = displays;
  const home = kept === null ? undefined : displays.find((display) => showsOn(kept, display));
  const room = home ?? main ?? FIRST;
  const size = (wanted: number, least: number, most: number) =>
    Math.min(Math.max(wanted, least), most);
  const fitted = {
    width: size(kept?.width ?? FIRST.width, SMALLEST.width, room.width),
    height: size(kept?.height ?? FIRST.height, SMALLEST.height, room.height),
    isMaximized: kept?.isMaximized ?? false,
  };
  return kept === null || home === undefined ? fitted : { ...fitted, x: kept.x, y: kept.y };
};

/** The place that the window last had. */
export const keptPlace = keptJson('window.json', zKept);
