import type { ViewState } from './view-store.ts';

/** One key that does something on the curve, as the list of keys tells it. */
export interface CurveKey {
  readonly keys: readonly string[];
  readonly shown: string;
  readonly does: string;
  readonly act: (state: ViewState, event: Pick<KeyboardEvent, 'key' | 'shiftKey'>) => void;
}

/** The crosshair's step, and the large one, as shares of what is in view (chosen). */
const STEP = 1 / 200;
const LARGE_STEP = 1 / 20;
const PAN_STEP = 1 / 5;
const ZOOM_FACTOR = 0.7;

const width = ({ view }: ViewState): number => view.to - view.from;
const way = (key: string): number => (key === 'ArrowLeft' || key === 'PageUp' ? -1 : 1);

export const CURVE_KEYS: readonly CurveKey[] = [
  {
    keys: ['ArrowLeft', 'ArrowRight'],
    shown: '← →',
    does: 'move the crosshair; with Shift, move the view',
    act: (state, { key, shiftKey }) => {
      if (shiftKey) state.pan(way(key) * PAN_STEP * width(state));
      else state.moveTo(state.atSeconds + way(key) * STEP * width(state));
    },
  },
  {
    keys: ['PageUp', 'PageDown'],
    shown: 'Page Up, Page Down',
    does: 'move the crosshair in large steps',
    act: (state, { key }) => state.moveTo(state.atSeconds + way(key) * LARGE_STEP * width(state)),
  },
  {
    keys: ['Home', 'End'],
    shown: 'Home, End',
    does: 'put the crosshair on the first or the last moment',
    act: (state, { key }) =>
      state.moveTo(key === 'Home' ? state.limits.whole.from : state.limits.whole.to),
  },
  {
    keys: ['+', '=', 'ArrowUp'],
    shown: '+ or ↑',
    does: 'look closer, about the crosshair',
    act: (state) => state.zoom(state.atSeconds, ZOOM_FACTOR),
  },
  {
    keys: ['-', '_', 'ArrowDown'],
    shown: '− or ↓',
    does: 'look from further off',
    act: (state) => state.zoom(state.atSeconds, 1 / ZOOM_FACTOR),
  },
  {
    keys: ['0'],
    shown: '0',
    does: 'show the whole firing',
    act: (state) => state.showWhole(),
  },
];

export const curveKey = (key: string): CurveKey | null =>
  CURVE_KEYS.find(({ keys }) => keys.includes(key)) ?? null;
