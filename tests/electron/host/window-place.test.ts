import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPlace, SMALLEST, type KeptPlace } from '../../../electron/host/window-place.ts';

const MAIN = { x: 0, y: 25, width: 1440, height: 875 };
const BESIDE = { x: 1440, y: 0, width: 1920, height: 1080 };

const kept = (x: number, y: number, width = 1000, height = 700): KeptPlace => ({
  x,
  y,
  width,
  height,
  isMaximized: false,
});

describe('the place of the window', () => {
  test('is in the middle of the main display at first', () => {
    expect(fitPlace(null, [MAIN])).toEqual({ width: 1280, height: 860, isMaximized: false });
  });

  test('is where it was, on whichever display', () => {
    expect(fitPlace(kept(100, 50), [MAIN, BESIDE])).toEqual(kept(100, 50));
    expect(fitPlace(kept(2000, 50, 1900), [MAIN, BESIDE])).toEqual(kept(2000, 50, 1900));
    const maximized = { ...kept(100, 50), isMaximized: true };
    expect(fitPlace(maximized, [MAIN])).toEqual(maximized);
  });

  test.each([
    ['on a display that has been unplugged', kept(2000, 50)],
    ['almost wholly beside the display', kept(1400, 50)],
    ['with its title bar above the display', kept(100, 0)],
    ['far below', kept(100, 880)],
  ])('is forgotten where it was %s; its size is not', (_where, place) => {
    expect(fitPlace(place, [MAIN])).toEqual({ width: 1000, height: 700, isMaximized: false });
  });

  test('is no larger than its display, nor smaller than the sheet', () => {
    expect(fitPlace(kept(0, 25, 5000, 5000), [MAIN])).toMatchObject({ width: 1440, height: 875 });
    expect(fitPlace(kept(0, 25, 10, 10), [MAIN])).toMatchObject(SMALLEST);
    const tiny = { x: 0, y: 0, width: 800, height: 480 };
    expect(fitPlace(null, [tiny])).toMatchObject({ width: 800, height: 480 });
  });

  test('is always one that can be seen', () => {
    const pixels = fc.integer({ min: -5000, max: 5000 });
    const size = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(pixels, pixels, size, size, (x, y, width, height) => {
        const place = fitPlace(kept(x, y, width, height), [MAIN, BESIDE]);
        if (place.x === undefined || place.y === undefined) return;
        const { x: left, y: top } = place;
        const isSeen = [MAIN, BESIDE].some(
          (display) =>
            top >= display.y &&
            top + 100 <= display.y + display.height &&
            left + place.width >= display.x + 100 &&
            left + 100 <= display.x + display.width,
        );
        expect(isSeen).toBe(true);
      }),
    );
  });
});
