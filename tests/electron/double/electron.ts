/** The names of `electron` that the main process uses; see README.md for what is true in them. */
export { app, protocol } from './app.ts';
export { BrowserWindow } from './browser-window.ts';
export { ipcMain } from './ipc-main.ts';
export { session } from './session.ts';
export { clipboard, dialog, Menu, nativeTheme, screen } from './system.ts';
