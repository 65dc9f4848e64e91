import { beforeEach, describe, expect, test, vi } from 'vitest';
import { menuTemplate } from '../../../electron/menu.ts';
import { DEFAULT_PREFERENCES, MENU_COMMANDS } from '../../../electron/host/contract.ts';
import { createActions } from '../../../renderer/app/actions.ts';
import { shortcutFor, type Reach } from '../../../renderer/app/shortcuts.ts';
import { createViewStore } from '../../../renderer/curve/view-store.ts';
import type { HistoryStore } from '../../../renderer/history/history-store.ts';
import type { Host, Saved } from '../../../renderer/host/host.ts';
import { createAppStore } from '../../../renderer/state/store.ts';
import { menuEntries, type MenuEntry } from '../../electron/double/control.ts';

const NOTHING = {
  fileNames: [],
  opened: Promise.resolve({ logs: [], schedule: null, refused: [] }),
};
const A_FILE = { fileName: 'a.report.html', kind: 'text/html', text: 'a' } as const;

const aWindow = () => {
  const answers: Saved[] = [];
  const host = {
    save: () => Promise.resolve(answers.shift()!),
    openLogs: vi.fn(() => Promise.resolve(NOTHING)),
    openSchedule: vi.fn(() => Promise.resolve(NOTHING)),
  };
  const store = createAppStore(
    {} as Parameters<typeof createAppStore>[0],
    { preferences: DEFAULT_PREFERENCES, schedules: [] },
    { keepPreferences: () => undefined } as unknown as Parameters<typeof createAppStore>[2],
  );
  const view = createViewStore({ nextFrame: () => undefined, isWanted: () => false });
  const history = {
    getState: () => ({ isShown: false, hide: () => undefined, history: { kind: 'none' } }),
  } as unknown as HistoryStore;
  const actions = createActions(host as unknown as Host, store, view, history);
  return { answers, host, store, view, actions };
};

let window: ReturnType<typeof aWindow>;
beforeEach(() => {
  window = aWindow();
});
const notice = () => window.store.getState().notice;
const save = async (answer: Saved): Promise<void> => {
  window.answers.push(answer);
  window.actions.save(A_FILE);
  await vi.waitFor(() => {
    expect(window.answers).toEqual([]);
  });
  await Promise.resolve();
};

describe('what is said of a file that is saved', () => {
  test('is its own failure only: the next that comes off takes its place', async () => {
    await save({ outcome: 'failed', why: 'the disk is full' });
    expect(notice()?.text).toBe('“a.report.html” was not saved: the disk is full');
    await save({ outcome: 'saved', fileName: 'b.html' });
    expect(notice()).toEqual({ tone: 'said', text: 'Saved b.html.' });
  });

  test('is the name that was chosen, or else the one that was proposed', async () => {
    await save({ outcome: 'saved', fileName: 'b.html' });
    expect(window.store.getState().announcement).toBe('Saved b.html.');
    await save({ outcome: 'saved' });
    expect(window.store.getState().announcement).toBe('Saved a.report.html.');
    expect(notice()).toBeNull();
  });
});

describe('a choice in the menu', () => {
  test('closes the dialog that it would happen behind', () => {
    for (const command of ['open-logs', 'open-schedule', 'zoom-reset', 'save-report'] as const) {
      window.store.getState().showDialog('keys');
      window.actions.obey(command);
      expect(window.store.getState().dialog, command).toBeNull();
    }
    window.actions.obey('show-about');
    expect(window.store.getState().dialog).toBe('about');
  });

  test('of how the window looks leaves the dialog there', () => {
    window.store.getState().showDialog('keys');
    window.actions.obey('text-larger');
    expect(window.store.getState().dialog).toBe('keys');
  });
});

/** A key press as the page is told it, for an accelerator in Electron's writing. */
const pressOf = (accelerator: string) => {
  const parts = accelerator.split('+');
  return {
    key: parts.at(-1) ?? '',
    ctrlKey: parts.includes('CmdOrCtrl'),
    shiftKey: parts.includes('Shift'),
    metaKey: false,
    altKey: false,
  };
};

/** Which of the actions a deed comes to. */
const actionBehind = (deed: (actions: Reach['actions']) => void): string => {
  let called = '';
  const actions = new Proxy({} as Reach['actions'], {
    get: (_target, name) => () => {
      called = String(name);
    },
  });
  deed(actions);
  return called;
};

describe('the keys that the menu shows', () => {
  const DOES: Readonly<Record<string, string>> = {
    'open-logs': 'openLogs',
    'open-schedule': 'openSchedule',
    'save-report': 'saveReport',
    print: 'print',
  };
  const template = menuTemplate({
    platform: 'linux',
    preferences: DEFAULT_PREFERENCES,
    hasDevTools: false,
    choose: () => undefined,
  }) as unknown as MenuEntry[];
  const withKeys = menuEntries(template).flatMap(({ id, accelerator }) =>
    id === undefined || accelerator === undefined ? [] : [{ id, accelerator }],
  );

  // A page is asked before the menu is: what it answers, the menu never hears of.
  test.each(withKeys)('do the same where the page hears them first: $accelerator', (entry) => {
    expect(MENU_COMMANDS).toContain(entry.id);
    const heard = shortcutFor(pressOf(entry.accelerator), true);
    const done = heard && actionBehind((actions) => heard.act({ actions } as Reach));
    expect(done).toBe(DOES[entry.id] ?? null);
  });
});
