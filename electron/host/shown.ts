/** What the desktop window says on standard output once it can be seen; `npm start` waits for it. */
export const SHOWN = 'afterfire: the window is open';

/** What a second start says once the window that is open has been given its files. */
export const HANDED_ON = 'afterfire: the open window has the files';
