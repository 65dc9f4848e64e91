import { Menu, type MenuItemConstructorOptions } from 'electron';
import type { MenuCommand, Preferences } from './host/contract.ts';

type Item = MenuItemConstructorOptions;

/** What the menu depends on. */
export interface MenuState {
  readonly platform: NodeJS.Platform;
  readonly preferences: Preferences;
  /** Whether the tools of developers are offered. */
  readonly hasDevTools: boolean;
  /** Passes a choice on to the page. */
  readonly choose: (command: MenuCommand) => void;
}

const LINE: Item = { type: 'separator' };

const appMenu: Item = { role: 'appMenu' };

type Entry = (label: string, command: MenuCommand, accelerator?: string) => Item;

const entries =
  ({ choose }: MenuState): Entry =>
  (label, command, accelerator) => ({
    id: command,
    label,
    ...(accelerator === undefined ? {} : { accelerator }),
    click: () => {
      choose(command);
    },
  });

const fileMenu = ({ platform }: MenuState, entry: Entry): Item => {
  const isMac = platform === 'darwin';
  const recent: Item = {
    role: 'recentDocuments',
    label: 'Open Recent',
    submenu: [{ role: 'clearRecentDocuments' }],
  };
  return {
    label: '&File',
    submenu: [
      entry('&Open Log…', 'open-logs', 'CmdOrCtrl+O'),
      entry('Open &Schedule…', 'open-schedule', 'Shift+CmdOrCtrl+O'),
      entry('&Type Readings In…', 'type-in', 'CmdOrCtrl+T'),
      ...(isMac ? [recent] : []),
      LINE,
      entry('Save &Report…', 'save-report', 'CmdOrCtrl+S'),
      entry('&Export Curve and Legs…', 'export-csv', 'CmdOrCtrl+E'),
      LINE,
      entry('&Print…', 'print', 'CmdOrCtrl+P'),
      LINE,
      isMac ? { role: 'close' } : { role: 'quit' },
    ],
  };
};

const editMenu = (entry: Entry): Item => ({
  label: '&Edit',
  submenu: [
    { role: 'undo' },
    { role: 'redo' },
    LINE,
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    { role: 'selectAll' },
    LINE,
    entry('Copy &Verdict as Text', 'copy-verdict', 'Shift+CmdOrCtrl+C'),
  ],
});

const viewMenu = ({ preferences, hasDevTools }: MenuState, entry: Entry): Item => {
  const radio = (item: Item, checked: boolean): Item => ({ ...item, type: 'radio', checked });
  const { unit, theme } = preferences;
  return {
    label: '&View',
    submenu: [
      radio(entry('Temperatures in °&C', 'unit-c'), unit === 'C'),
      radio(entry('Temperatures in °&F', 'unit-f'), unit === 'F'),
      LINE,
      radio(entry('Colours as the S&ystem', 'theme-system'), theme === 'system'),
      radio(entry('&Light Colours', 'theme-light'), theme === 'light'),
      radio(entry('&Dark Colours', 'theme-dark'), theme === 'dark'),
      LINE,
      entry('La&rger Text', 'text-larger', 'CmdOrCtrl+Plus'),
      entry('&Smaller Text', 'text-smaller', 'CmdOrCtrl+-'),
      entry('&Normal Text', 'text-normal', 'CmdOrCtrl+0'),
      LINE,
      entry('&Whole Firing', 'zoom-reset'),
      entry('Reading R&ules…', 'show-rules'),
      { role: 'togglefullscreen' },
      ...(hasDevTools ? [LINE, { role: 'toggleDevTools' } as const] : []),
    ],
  };
};

const helpMenu = ({ platform }: MenuState, entry: Entry): Item => ({
  role: 'help',
  label: '&Help',
  submenu: [
    entry('&Keys', 'show-keys', 'F1'),
    ...(platform === 'darwin' ? [] : [LINE, entry('&About Afterfire', 'show-about')]),
  ],
});

/** The menus by the platform's conventions. */
export const menuTemplate = (state: MenuState): Item[] => {
  const entry = entries(state);
  const isMac = state.platform === 'darwin';
  return [
    ...(isMac ? [appMenu] : []),
    fileMenu(state, entry),
    editMenu(entry),
    viewMenu(state, entry),
    ...(isMac ? [{ role: 'windowMenu' } as const] : []),
    helpMenu(state, entry),
  ];
};

/** Puts the menus up. */
export const showMenu = (state: MenuState): void => {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(state)));
};
