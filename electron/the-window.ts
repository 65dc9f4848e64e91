import { app, type BrowserWindow } from 'electron';
import type { HandedFile, MenuCommand } from './host/contract.ts';
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
  /** What the page was told of and has not read, by its ticket: it may be gone before it does. */
  const unread = new Map<string, NamedFile>();
  let chosen: MenuCommand | null = null;

  const hand = (named: readonly NamedFile[]): HandedFile[] => {
    const handed = files.hand(named);
    for (const [index, { ticket }] of handed.entries()) unread.set(ticket, named[index]!);
    return handed;
  };

  const open = (): void => {
    if (!mayOpen || window !== null) return;
    window = openWindow(app.getPath('userData'), onShown);
    window.webContents.on('render-process-gone', () => {
      isListening = false;
    });
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
    /**
     * The page is there, for the first time or anew: from now on it is told of files. Gives those
     * that waited for it, and those that the page before it never came to read.
     */
    begin: () => {
      isListening = true;
      const named = [...unread.values(), ...waiting];
      unread.clear();
      waiting = [];
      if (chosen !== null && window !== null) tellPage(window.webContents, 'menu-command', chosen);
      chosen = null;
      return hand(named);
    },
    /** The page has come to read a file. */
    isRead: (ticket: string): void => {
      unread.delete(ticket);
    },
    /** Takes files that were named from outside, and brings the window to the front. */
    receive: (named: readonly NamedFile[]): void => {
      if (window === null || !isListening) waiting = [...waiting, ...named];
      else if (named.length > 0) tellPage(window.webContents, 'files-handed', hand(named));
      if (window === null) {
        open();
        return;
      }
      if (window.isMinimized()) window.restore();
      window.focus();
    },
    /** Passes a choice in the menu on. Where there is no window (macOS), opens it and does it there. */
    choose: (command: MenuCommand): void => {
      if (window !== null && isListening) {
        tellPage(window.webContents, 'menu-command', command);
        return;
      }
      chosen = command;
      open();
    },
  };
};
