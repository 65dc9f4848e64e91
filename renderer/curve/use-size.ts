import { useLayoutEffect, useState, type RefObject } from 'react';

export interface SurfaceSize {
  readonly width: number;
  /** How high the curve itself may be, by the height of the window. */
  readonly curveHeight: number;
  /** The size of small type; it follows the text size that was set. */
  readonly typePx: number;
}

/** Shares of the window that suit both a small screen and a large one, and bounds (chosen). */
const HEIGHT_SHARE = 0.38;
const LEAST_HEIGHT_PX = 220;
const MOST_HEIGHT_PX = 520;

/** Small type is 0.875 of the text, as in the tokens. */
const SMALL = 0.875;

const sizeOf = (element: HTMLElement): SurfaceSize => {
  const rootPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const wanted = Math.max(LEAST_HEIGHT_PX, HEIGHT_SHARE * window.innerHeight);
  return {
    width: Math.floor(element.clientWidth),
    curveHeight: Math.round(Math.min(MOST_HEIGHT_PX, wanted)),
    typePx: Math.round(rootPx * SMALL),
  };
};

/** How large the curve may be drawn; null before it stands on the page. */
export const useSurfaceSize = (
  ref: RefObject<HTMLElement | null>,
  textPercent: number,
): SurfaceSize | null => {
  const [size, setSize] = useState<SurfaceSize | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = (): void => {
      const next = sizeOf(element);
      setSize((last) =>
        last !== null &&
        last.width === next.width &&
        last.curveHeight === next.curveHeight &&
        last.typePx === next.typePx
          ? last
          : next,
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    window.addEventListener('resize', measure);
    return () => {
      observer.disconnect();
      window.removeEventListener('resize', measure);
    };
  }, [ref, textPercent]);
  return size;
};
