/**
 * The names of the contract's messages, apart from its schemas: the preload knows these and nothing
 * more, so that no library runs there.
 */

/** What the page may ask. */
export const REQUEST_NAMES = [
  'open-session',
  'open-logs',
  'open-schedule',
  'read-file',
  'save-file',
  'copy-text',
  'keep-preferences',
  'keep-schedule',
  'forget-schedule',
  'keep-rule',
  'forget-rule',
] as const;
export type RequestName = (typeof REQUEST_NAMES)[number];

/** What the page is told without having asked. */
export const EVENT_NAMES = ['files-handed', 'menu-command'] as const;
export type EventName = (typeof EVENT_NAMES)[number];

/**
 * What the preload puts into the page as `window.afterfire`: one function for each request, and one
 * to listen to each event, which returns what ends the listening. All values are unparsed.
 */
export interface Bridge {
  readonly ask: Readonly<Record<RequestName, (sent: unknown) => Promise<unknown>>>;
  readonly on: Readonly<Record<EventName, (listener: (told: unknown) => void) => () => void>>;
}

/** The name of the bridge on the page's `window`. */
export const BRIDGE = 'afterfire';
