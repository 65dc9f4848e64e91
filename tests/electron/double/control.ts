import type { Browser, BrowserContextOptions } from 'playwright-core';

/** What the system answers to a dialog. */
export interface DialogAnswers {
  /** Paths that the person chooses next, one list a dialog; none: they change their mind. */
  readonly open: string[][];
  /** Where the person saves next; empty: they change their mind. */
  readonly save: string[];
  /** The number of the button that is pressed next. */
  readonly message: number[];
}

/** An entry of the menu, as the program described it. */
export interface MenuEntry {
  readonly id?: string;
  readonly label?: string;
  readonly role?: string;
  readonly type?: string;
  readonly checked?: boolean;
  readonly accelerator?: string;
  readonly click?: () => void;
  readonly submenu?: readonly MenuEntry[];
}

/** One run of the main process: what the double is given, and what it saw. */
export interface Control {
  readonly browser: Browser;
  readonly userData: string;
  /** The screen and the system that the window is opened on, where they matter. */
  readonly context: BrowserContextOptions;
  /** Whether this is the first instance. */
  readonly isFirst: boolean;
  readonly answers: DialogAnswers;
  /** Options that dialogs were shown with, in order. */
  readonly dialogs: { readonly kind: string; readonly options: unknown }[];
  readonly clipboard: string[];
  readonly recent: string[];
  readonly switches: string[];
  menu: readonly MenuEntry[];
  lockData: unknown;
  isSandboxed: boolean;
  hasQuit: boolean;
  exitCode: number | null;
}

/** The double is loaded anew for each run; what stands here is not. */
const RUN = Symbol.for('afterfire.electron-double');

/** Begins a run; the double looks it up while the main process is loaded. */
export const beginRun = (run: Control): void => {
  Reflect.set(globalThis, RUN, run);
};

/** The run that is on. */
export const control = (): Control => {
  const run = Reflect.get(globalThis, RUN) as Control | undefined;
  if (run === undefined) throw new Error('no run of the double has begun');
  return run;
};

/** Every entry of the menu, those of submenus too. */
export const menuEntries = (entries: readonly MenuEntry[] = control().menu): MenuEntry[] =>
  entries.flatMap((entry) => [entry, ...menuEntries(entry.submenu ?? [])]);

/** Chooses an entry of the menu by its id. */
export const chooseInMenu = (id: string): void => {
  const entry = menuEntries().find((one) => one.id === id);
  if (entry?.click === undefined) throw new Error(`the menu has no entry ${id}`);
  entry.click();
};
