import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { DARK, LIGHT } from '../../core/report/html/palette.ts';
import type { OpenFiring } from '../state/firing.ts';
import type { Painting } from './paint.ts';
import { pictureOf, sceneOf, type Scene } from './scene.ts';
import { timeTicksIn } from './time-ticks.ts';
import type { SurfaceSize } from './use-size.ts';
import { useViewStore } from './use-view.ts';
import type { View } from './view.ts';

/** Room for the scale on the left, in sizes of its type, and on the right in pixels (chosen). */
const LEFT_TYPES = 3.8;
export const RIGHT_PX = 10;
/** A label on the clock needs about so many sizes of its type (chosen). */
const TICK_TYPES = 5.5;
const FACE = "'Source Sans 3 Variable', system-ui, sans-serif";

export const useScene = ({ document, trace, words }: OpenFiring): Scene =>
  useMemo(() => sceneOf(document, trace, words), [document, trace, words]);

/** Follows the firing: another log begins with the whole of it, another plan keeps the view. */
export const useFollowing = (firing: OpenFiring, { whole }: Scene): void => {
  const store = useViewStore();
  const { log, document } = firing;
  const { medianIntervalSeconds, peakAtSeconds } = document.trace;
  const lastLog = useRef<unknown>(null);
  const { from, to } = whole;
  useLayoutEffect(() => {
    const { reset, resize } = store.getState();
    if (lastLog.current === log) resize({ from, to }, medianIntervalSeconds);
    else reset({ from, to }, medianIntervalSeconds, peakAtSeconds);
    lastLog.current = log;
  }, [store, log, from, to, medianIntervalSeconds, peakAtSeconds]);
};

/** Canvas text is drawn once; when the face has come in it must be drawn again. */
const useFaceReady = (): boolean => {
  const [isReady, setReady] = useState(false);
  useEffect(() => {
    let isHere = true;
    void document.fonts.load(`16px ${FACE}`).then(() => isHere && setReady(true));
    return () => {
      isHere = false;
    };
  }, []);
  return isReady;
};

/** How the width is parted between the scale and the plots. */
export interface Layout {
  readonly left: number;
  readonly width: number;
  readonly size: SurfaceSize;
}

export const layoutOf = (size: SurfaceSize): Layout => {
  const left = Math.round(size.typePx * LEFT_TYPES);
  return { left, width: Math.max(10, size.width - left - RIGHT_PX), size };
};

/** What the pictures show besides the view. */
interface PaintedWith {
  readonly firing: OpenFiring;
  readonly theme: 'light' | 'dark';
  readonly selected: number | null;
}

/** Everything that the pictures of a view are painted from. */
export const usePainting = (
  scene: Scene,
  view: View,
  { size, width }: Layout,
  { theme, selected, firing }: PaintedWith,
): Painting => {
  const isFaceReady = useFaceReady();
  const { startInstant } = firing.document.trace;
  const picture = useMemo(() => pictureOf(scene, view), [scene, view]);
  return useMemo(() => {
    const most = Math.max(2, Math.floor(width / (size.typePx * TICK_TYPES)));
    const finding = selected === null ? undefined : firing.document.findings[selected];
    return {
      ...{ scene, picture },
      palette: theme === 'dark' ? DARK : LIGHT,
      ticks: timeTicksIn(view, most, startInstant),
      typePx: size.typePx,
      face: isFaceReady ? FACE : 'system-ui, sans-serif',
      chosen: finding?.evidence ?? [],
    };
  }, [scene, picture, view, width, size, theme, selected, firing, startInstant, isFaceReady]);
};
