import type { ViewStore } from './view-store.ts';
import { isWhole, momentAt, type View } from './view.ts';

/** Where the plots' own area lies across the surface, in pixels. */
export interface Across {
  readonly left: number;
  readonly width: number;
}

/** A stretch that is being drawn out with the pointer, in pixels across the plots. */
export interface Drawn {
  readonly from: number;
  readonly to: number;
}

/** A drag shorter than this is a click (chosen: a hand is not still). */
const CLICK_PX = 5;
/** One notch of a usual wheel, and how much closer it brings (chosen). */
const NOTCH_PX = 100;
const NOTCH_FACTOR = 0.8;
/** A wheel's turn that began over the page goes on scrolling it for so long (chosen). */
const SAME_TURN_MS = 350;

const wheelPixels = ({ deltaMode }: WheelEvent, delta: number): number =>
  delta *
  (deltaMode === WheelEvent.DOM_DELTA_LINE
    ? 16
    : deltaMode === WheelEvent.DOM_DELTA_PAGE
      ? 400
      : 1);

/** Wheel: closer and further about the pointer; sideways, or with Shift, along the clock. */
const wheelOver = (surface: HTMLElement, store: ViewStore, across: () => Across) => {
  let lastTurn = -Infinity;
  let isOurs = false;
  const note = (event: WheelEvent): void => {
    const goesOn = event.timeStamp - lastTurn < SAME_TURN_MS;
    lastTurn = event.timeStamp;
    const isOver = event.target instanceof Node && surface.contains(event.target);
    if (!goesOn) isOurs = isOver;
    if (!isOver || !(isOurs || event.ctrlKey)) return;
    const { view, limits, zoom, pan } = store.getState();
    const { left, width } = across();
    const place = event.clientX - surface.getBoundingClientRect().left - left;
    const [dx, dy] = [wheelPixels(event, event.deltaX), wheelPixels(event, event.deltaY)];
    const sideways = event.shiftKey ? dx + dy : dx;
    if (event.shiftKey || Math.abs(dx) > Math.abs(dy)) {
      pan((sideways / width) * (view.to - view.from));
    } else {
      // With nothing further out to see, the page scrolls on.
      if (isWhole(limits, view) && dy > 0 && !event.ctrlKey) return;
      const pinch = event.ctrlKey ? 4 : 1;
      zoom(momentAt(view, width, place), NOTCH_FACTOR ** ((-dy * pinch) / NOTCH_PX));
    }
    event.preventDefault();
  };
  window.addEventListener('wheel', note, { passive: false });
  return () => window.removeEventListener('wheel', note);
};

type Point = Pick<PointerEvent, 'clientX'>;

/** Two fingers: the moments under them stay under them. */
const pinched = (
  view: View,
  width: number,
  before: [number, number],
  now: [number, number],
): View => {
  const [a, b] = before.map((place) => momentAt(view, width, place)) as [number, number];
  const spread = Math.max(1, Math.abs(now[1] - now[0])) * Math.sign(now[1] - now[0] || 1);
  const perPixel = (b - a) / spread;
  const from = a - now[0] * perPixel;
  return { from, to: from + width * perPixel };
};

type Drag =
  | { readonly kind: 'draw'; readonly from: number }
  | { readonly kind: 'pan'; readonly from: number; readonly view: View }
  | { readonly kind: 'scrub' };

const pointerOver = (
  surface: HTMLElement,
  store: ViewStore,
  across: () => Across,
  onDrawn: (drawn: Drawn | null) => void,
) => {
  const touches = new Map<number, number>();
  let drag: Drag | null = null;

  const placeOf = ({ clientX }: Point): number => {
    const { left, width } = across();
    const place = clientX - surface.getBoundingClientRect().left - left;
    return Math.min(Math.max(place, 0), width);
  };
  const scrub = (place: number): void => {
    const { view, moveTo } = store.getState();
    moveTo(momentAt(view, across().width, place));
  };

  const down = (event: PointerEvent): void => {
    const place = placeOf(event);
    surface.setPointerCapture(event.pointerId);
    if (event.pointerType === 'touch') {
      touches.set(event.pointerId, place);
      drag = { kind: 'scrub' };
      scrub(place);
      return;
    }
    const isPan = event.shiftKey || event.button === 1;
    if (event.button > 1) return;
    if (isPan) event.preventDefault();
    drag = isPan
      ? { kind: 'pan', from: place, view: store.getState().view }
      : { kind: 'draw', from: place };
  };

  const pinch = (id: number, place: number): void => {
    const [first, second] = [...touches.keys()];
    if (first === undefined || second === undefined) return;
    const before: [number, number] = [touches.get(first) ?? 0, touches.get(second) ?? 0];
    touches.set(id, place);
    const now: [number, number] = [touches.get(first) ?? 0, touches.get(second) ?? 0];
    const { view, limits, zoom, pan } = store.getState();
    const next = pinched(view, across().width, before, now);
    const factor = (next.to - next.from) / (view.to - view.from);
    if (!(factor > 0) || limits.whole.to <= limits.whole.from) return;
    zoom((view.from + view.to) / 2, factor);
    const moved = store.getState().view;
    pan((next.from + next.to) / 2 - (moved.from + moved.to) / 2);
  };

  const move = (event: PointerEvent): void => {
    const place = placeOf(event);
    if (event.pointerType === 'touch') {
      if (touches.size > 1) pinch(event.pointerId, place);
      else if (drag) scrub(place);
      return;
    }
    if (drag?.kind === 'pan') {
      const { pan, view } = store.getState();
      const perPixel = (view.to - view.from) / across().width;
      pan(drag.view.from - (place - drag.from) * perPixel - view.from);
      return;
    }
    scrub(place);
    if (drag?.kind === 'draw' && Math.abs(place - drag.from) >= CLICK_PX) {
      onDrawn({ from: Math.min(drag.from, place), to: Math.max(drag.from, place) });
    }
  };

  const up = (event: PointerEvent): void => {
    touches.delete(event.pointerId);
    const place = placeOf(event);
    const { view, showExactly } = store.getState();
    const { width } = across();
    if (
      drag?.kind === 'draw' &&
      Math.abs(place - drag.from) >= CLICK_PX &&
      event.type === 'pointerup'
    ) {
      const ends = [drag.from, place].map((at) => momentAt(view, width, at)).sort((a, b) => a - b);
      showExactly({ from: ends[0]!, to: ends[1]! });
    }
    if (touches.size === 0) drag = null;
    onDrawn(null);
  };

  const all = store.getState().showWhole;
  surface.addEventListener('pointerdown', down);
  surface.addEventListener('pointermove', move);
  surface.addEventListener('pointerup', up);
  surface.addEventListener('pointercancel', up);
  surface.addEventListener('dblclick', all);
  return () => {
    surface.removeEventListener('pointerdown', down);
    surface.removeEventListener('pointermove', move);
    surface.removeEventListener('pointerup', up);
    surface.removeEventListener('pointercancel', up);
    surface.removeEventListener('dblclick', all);
  };
};

/** Lets pointer, wheel and fingers move the view and the crosshair. Returns what ends it. */
export const attachGestures = (
  surface: HTMLElement,
  store: ViewStore,
  across: () => Across,
  onDrawn: (drawn: Drawn | null) => void,
): (() => void) => {
  const endWheel = wheelOver(surface, store, across);
  const endPointer = pointerOver(surface, store, across, onDrawn);
  return () => {
    endWheel();
    endPointer();
  };
};
