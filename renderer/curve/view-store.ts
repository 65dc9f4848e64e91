import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Span } from '../../core/model/scalars.ts';
import {
  about,
  between,
  isWhole,
  limitsOf,
  panned,
  within,
  zoomed,
  type Limits,
  type View,
} from './view.ts';

/** How long it takes to show where something went (chosen: seen, and not waited for). */
const GLIDE_MS = 220;

/** What drives a movement, so that tests can bring their own and a reader can have none. */
export interface Motion {
  /** Calls back before the next picture, with the time in milliseconds. */
  readonly nextFrame: (callback: (now: number) => void) => void;
  readonly isWanted: () => boolean;
}

export interface ViewState {
  readonly limits: Limits;
  readonly view: View;
  /** The moment under the crosshair. */
  readonly atSeconds: number;
  /** Begins anew for another log. */
  readonly reset: (whole: View, intervalSeconds: number, atSeconds: number) => void;
  /** Another plan may reach further: what there is to see changes, what is seen does not. */
  readonly resize: (whole: View, intervalSeconds: number) => void;
  readonly showWhole: () => void;
  /** Brings stretches into view. */
  readonly show: (stretches: readonly Span[]) => void;
  /** Brings exactly this stretch into view. */
  readonly showExactly: (view: View) => void;
  readonly zoom: (aboutSeconds: number, factor: number) => void;
  readonly pan: (bySeconds: number) => void;
  /** Puts the crosshair on a moment, and the moment into view. */
  readonly moveTo: (atSeconds: number) => void;
}

export type ViewStore = StoreApi<ViewState>;

const NOTHING: View = { from: 0, to: 1 };

/** The view of the curve: changed up to every frame, so it stands apart from the window's state. */
export const createViewStore = ({ nextFrame, isWanted }: Motion): ViewStore =>
  createStore<ViewState>((set, get) => {
    let glide = 0;

    /** Moves there at once and ends any movement under way. */
    const put = (view: View): void => {
      glide++;
      set({ view });
    };

    const glideTo = (target: View): void => {
      const begin = get().view;
      const mine = ++glide;
      if (!isWanted()) {
        set({ view: target });
        return;
      }
      let started: number | null = null;
      const step = (now: number): void => {
        if (mine !== glide) return;
        started ??= now;
        const share = Math.min(1, (now - started) / GLIDE_MS);
        const eased = 1 - (1 - share) ** 3;
        set({ view: share >= 1 ? target : between(begin, target, eased) });
        if (share < 1) nextFrame(step);
      };
      nextFrame(step);
    };

    return {
      limits: limitsOf(NOTHING, 1),
      view: NOTHING,
      atSeconds: 0,
      reset: (whole, intervalSeconds, atSeconds) => {
        set({ limits: limitsOf(whole, intervalSeconds), atSeconds });
        put(whole);
      },
      resize: (whole, intervalSeconds) => {
        const { limits, view } = get();
        const wasWhole = isWhole(limits, view);
        const next = limitsOf(whole, intervalSeconds);
        set({ limits: next });
        put(wasWhole ? whole : within(next, view));
      },
      showWhole: () => glideTo(get().limits.whole),
      show: (stretches) => glideTo(about(get().limits, stretches)),
      showExactly: (view) => glideTo(within(get().limits, view)),
      zoom: (aboutSeconds, factor) => put(zoomed(get().limits, get().view, aboutSeconds, factor)),
      pan: (bySeconds) => put(panned(get().limits, get().view, bySeconds)),
      moveTo: (moment) => {
        const { limits, view } = get();
        const atSeconds = Math.min(Math.max(moment, limits.whole.from), limits.whole.to);
        set({ atSeconds });
        if (atSeconds < view.from) put(panned(limits, view, atSeconds - view.from));
        if (atSeconds > view.to) put(panned(limits, view, atSeconds - view.to));
      },
    };
  });
