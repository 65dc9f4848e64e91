/** What the desktop window says on standard output once it can be seen; `npm start` waits for it. */
export const SHOWN = 'afterfire: the window is open';
