import { BrowserWindow } from './browser-window.ts';
import { control, type MenuEntry } from './control.ts';

const shown = (kind: string, options: unknown): void => {
  control().dialogs.push({ kind, options });
};

export const dialog = {
  showOpenDialog: (_window: unknown, options: unknown) => {
    shown('open', options);
    const filePaths = control().answers.open.shift() ?? [];
    return Promise.resolve({ canceled: filePaths.length === 0, filePaths });
  },
  showSaveDialog: (_window: unknown, options: unknown) => {
    shown('save', options);
    const filePath = control().answers.save.shift() ?? '';
    return Promise.resolve({ canceled: filePath === '', filePath });
  },
  showMessageBox: (_window: unknown, options: unknown) => {
    shown('message', options);
    return Promise.resolve({ response: control().answers.message.shift() ?? 0 });
  },
  showErrorBox: (title: string, content: string): void => {
    shown('error', { title, content });
  },
};

export const Menu = {
  buildFromTemplate: (template: readonly MenuEntry[]) => template,
  setApplicationMenu: (menu: readonly MenuEntry[]): void => {
    control().menu = menu;
  },
};

let themeSource: 'system' | 'light' | 'dark' = 'system';

export const nativeTheme = {
  get themeSource() {
    return themeSource;
  },
  set themeSource(source) {
    themeSource = source;
    const colorScheme = source === 'system' ? (control().context.colorScheme ?? null) : source;
    for (const { webContents } of BrowserWindow.getAllWindows()) {
      void webContents.page?.emulateMedia({ colorScheme });
    }
  },
  get shouldUseDarkColors() {
    return themeSource === 'dark';
  },
};

const DISPLAY = { id: 1, workArea: { x: 0, y: 0, width: 1600, height: 1000 } };

export const screen = {
  getPrimaryDisplay: () => DISPLAY,
  getAllDisplays: () => [DISPLAY],
};

export const clipboard = {
  writeText: (text: string): Promise<void> => {
    control().clipboard.push(text);
    return Promise.resolve();
  },
};
