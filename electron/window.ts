import { app, BrowserWindow, dialog, nativeTheme, screen } from 'electron';
import { join } from 'node:path';
import { PAGE_ADDRESS } from './app-page.ts';
import { fitPlace, keptPlace, SMALLEST, type Rectangle } from './host/window-place.ts';

const PRELOAD = join(import.meta.dirname, 'preload.cjs');

/** What stands in the window until the page is drawn: the page's own paper. */
const paper = (): string => (nativeTheme.shouldUseDarkColors ? '#1b1a17' : '#fdfcf9');

/** The free areas of all displays, the main one first. */
const displays = (): readonly [Rectangle, ...Rectangle[]] => {
  const main = screen.getPrimaryDisplay();
  const others = screen.getAllDisplays().filter(({ id }) => id !== main.id);
  return [main.workArea, ...others.map(({ workArea }) => workArea)];
};

/** A page that fell over is offered again; nothing is lost but what was open in it. */
const offerAgain = async (window: BrowserWindow): Promise<void> => {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: 'The page of Afterfire has stopped working.',
    detail: 'Your files are untouched. You can start the page again and open the firing anew.',
    buttons: ['Start again', 'Close'],
    defaultId: 0,
    cancelId: 1,
  });
  if (response === 0) window.reload();
  else window.destroy();
};

/**
 * Opens the window where it last stood, and keeps its place when it is closed.
 *
 * @param folder where its place is kept
 */
export const openWindow = (folder: string, onShown: () => void): BrowserWindow => {
  const { isMaximized, ...place } = fitPlace(keptPlace.read(folder), displays());
  const window = new BrowserWindow({
    ...place,
    minWidth: Math.min(SMALLEST.width, place.width),
    minHeight: Math.min(SMALLEST.height, place.height),
    show: false,
    title: app.name,
    backgroundColor: paper(),
    webPreferences: {
      preload: PRELOAD,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  });
  window.once('ready-to-show', () => {
    if (isMaximized) window.maximize();
    window.show();
    onShown();
  });
  window.on('close', () => {
    keptPlace.keep(folder, { ...window.getNormalBounds(), isMaximized: window.isMaximized() });
  });
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') void offerAgain(window);
  });
  void window.loadURL(PAGE_ADDRESS);
  return window;
};
