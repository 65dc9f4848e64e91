import type { ViewStore } from '../curve/view-store.ts';
import type { AppState, AppStore } from '../state/store.ts';
import { openFiring } from '../state/store.ts';
import type { Actions } from './actions.ts';

/** What a key may do things to. */
export interface Reach {
  readonly state: AppState;
  readonly actions: Actions;
  readonly view: ViewStore;
  /** Chooses a finding and brings it into view, wherever the person is. */
  readonly choose: (finding: number | null) => void;
  readonly focusCurve: () => void;
  /** Opens the reading desk and goes there. */
  readonly openDesk: () => void;
}

/** One key, as the list of keys tells it. */
export interface Shortcut {
  readonly key: string;
  readonly shown: string;
  readonly does: string;
  /** With Ctrl, or the Mac's command key; it works in text fields too. */
  readonly isWithControl?: boolean;
  /** With Shift as well, where Ctrl and the key alone do something else. */
  readonly isWithShift?: boolean;
  readonly act: (reach: Reach) => void;
}

/** The next finding (or the one before), from none to none at the ends. */
export const stepped = (selected: number | null, count: number, by: 1 | -1): number | null => {
  if (count === 0) return null;
  if (selected === null) return by === 1 ? 0 : count - 1;
  const next = selected + by;
  return next < 0 || next >= count ? null : next;
};

const step =
  (by: 1 | -1) =>
  ({ state, choose }: Reach): void => {
    const count = openFiring(state)?.words.findings.length ?? 0;
    choose(stepped(state.selected, count, by));
  };

export const SHORTCUTS: readonly Shortcut[] = [
  {
    key: 'o',
    shown: 'Ctrl O',
    does: 'open a log',
    isWithControl: true,
    act: ({ actions }) => actions.openLogs(),
  },
  {
    key: 'o',
    shown: 'Ctrl Shift O',
    does: 'choose a schedule file',
    isWithControl: true,
    isWithShift: true,
    act: ({ actions }) => actions.openSchedule(),
  },
  {
    key: 's',
    shown: 'Ctrl S',
    does: 'save the report',
    isWithControl: true,
    act: ({ actions }) => actions.saveReport(),
  },
  {
    key: 'p',
    shown: 'Ctrl P',
    does: 'print the report',
    isWithControl: true,
    act: ({ actions }) => actions.print(),
  },
  { key: 'o', shown: 'O', does: 'open a log', act: ({ actions }) => actions.openLogs() },
  {
    key: 'i',
    shown: 'I',
    does: 'type readings in, or put them right',
    act: ({ actions }) => actions.typeIn(),
  },
  {
    key: 's',
    shown: 'S',
    does: 'choose a schedule file',
    act: ({ actions }) => actions.openSchedule(),
  },
  {
    key: 't',
    shown: 'T',
    does: 'show or hide the schedule and the kiln',
    act: ({ state }) => state.showTelling(!state.isTelling),
  },
  {
    key: 'd',
    shown: 'D',
    does: 'show or hide how the log was read',
    act: ({ state, openDesk }) => (state.isDesk ? void state.showDesk(false) : openDesk()),
  },
  { key: 'n', shown: 'N', does: 'choose the next finding', act: step(1) },
  { key: 'p', shown: 'P', does: 'choose the finding before', act: step(-1) },
  {
    key: 'c',
    shown: 'C',
    does: 'go to the curve and its crosshair',
    act: ({ focusCurve }) => focusCurve(),
  },
  {
    key: 'u',
    shown: 'U',
    does: 'change between °C and °F',
    act: ({ actions }) => actions.switchUnit(),
  },
  {
    key: '0',
    shown: '0',
    does: 'show the whole firing',
    act: ({ view }) => view.getState().showWhole(),
  },
  { key: 'r', shown: 'R', does: 'save the report', act: ({ actions }) => actions.saveReport() },
  {
    key: 'v',
    shown: 'V',
    does: 'copy the verdict as text',
    act: ({ actions }) => actions.copyVerdict(),
  },
  { key: '?', shown: '?', does: 'show this list', act: ({ state }) => state.showDialog('keys') },
  {
    key: 'Escape',
    shown: 'Esc',
    does: 'close what is open, or stop the reading',
    act: ({ state, choose }) => {
      if (state.arriving) state.arriving.stop();
      else if (state.firing.kind === 'reading') state.cancelReading();
      else if (state.selected !== null) choose(null);
      else if (state.notice) state.notify(null);
      else if (state.isTelling) state.showTelling(false);
      else if (state.isDesk) void state.showDesk(false);
    },
  },
];

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** Alone, a key is the same with Shift: some keyboards need it, and Caps Lock stands in for it. */
const isMeant = (
  { isWithControl = false, isWithShift = false, ...shortcut }: Shortcut,
  { key, ctrlKey, metaKey, shiftKey }: Pressed,
): boolean =>
  shortcut.key.toLowerCase() === key.toLowerCase() &&
  isWithControl === (ctrlKey || metaKey) &&
  (!isWithControl || isWithShift === shiftKey);

/** The shortcut that a key press means, or null. */
export const shortcutFor = (pressed: Pressed, hasSingleKeys: boolean): Shortcut | null => {
  if (pressed.altKey) return null;
  const found = SHORTCUTS.find((shortcut) => isMeant(shortcut, pressed));
  if (!found) return null;
  return found.isWithControl === true || hasSingleKeys || found.key.length > 1 ? found : null;
};

const TYPED_IN = 'input, textarea, select, [contenteditable], [role="listbox"], [role="menu"]';

/** Listens for the window's keys. Returns what ends it. */
export const listenForKeys = (
  store: AppStore,
  reachOf: (state: AppState) => Reach,
): (() => void) => {
  const onKey = (event: KeyboardEvent): void => {
    const state = store.getState();
    const isTyping = event.target instanceof Element && event.target.closest(TYPED_IN) !== null;
    // Wherever the focus is: what had it may be gone.
    const isInDialog = document.querySelector('dialog[open]') !== null;
    const shortcut = shortcutFor(event, state.preferences.singleKeys);
    if (!shortcut || event.defaultPrevented || isInDialog) return;
    if (isTyping && shortcut.isWithControl !== true) return;
    event.preventDefault();
    shortcut.act(reachOf(state));
  };
  window.addEventListener('keydown', onKey);
  return () => window.removeEventListener('keydown', onKey);
};
