import { app, type BrowserWindow } from 'electron';
import type { MenuCommand } from './host/contract.ts';
import type { HandedFiles, NamedFile } from './host/handed-files.ts';
import { tellPage } from './messages.ts';
import { openWindow } from './window.ts';

/**
 * The one window, with what is to be shown in it. Files may be named at any time: before there is a
 * window, before its page listens, or after; none is lost and none is opened twice.
 */
export const theWindow = (files: HandedFiles, onShown: () => void) => {
  let window: BrowserWindow | null = null;
  let mayOpen = false;
  let isListening = false;
  let waiting: NamedFile[] = [];

  const open = (): void => {
    if (!mayOpen || window !== null) return;
    window = openWindow(app.getPath('userData'), onShown);
    window.on('closed', () => {
      window = null;
      isListening = false;
    });
  };

  return {
    /** Everything is in place to open the window: does so, and from now on whenever it is called for. */
    show: (): void => {
      mayOpen = true;
      open();
    },
    /** The window that asked something; it is open, since only its page can ask. */
    current: (): BrowserWindow => {
      if (window === null) throw new Error('the window has been closed');
      return window;
    },
    /** The page is there: from now on it is told of files. Gives those that waited for it. */
    begin: () => {
      isListening = true;
      const begun = files.hand(waiting);
      waiting = [];
      return begun;
    },
    /** Takes files that were named from outside, and brings the window to the front. */
    receive: (named: readonly NamedFile[]): void => {
      if (window === null || !isListening) {
        waiting = [...waiting, ...named];
        open();
        return;
      }
      if (window.isMinimized()) window.restore();
      window.focus();
      if (named.length > 0) tellPage(window.webContents, 'files-handed', files.hand(named));
    },
    /** Passes a choice in the menu on. */
    choose: (command: MenuCommand): void => {
      if (window !== null && isListening) tellPage(window.webContents, 'menu-command', command);
    },
  };
};
