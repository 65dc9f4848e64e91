import type { RequestName } from '../../electron/host/contract.ts';
import { download } from './download.ts';
import { HostGone } from './host-gone.ts';
import type { Host } from './interface.ts';
import { filesIn } from './opened.ts';
import { pickFiles } from './pick-files.ts';
import { ruleShelf } from './rule-shelf.ts';
import { scheduleShelf } from './schedule-shelf.ts';
import { ask, type Wire } from './transport.ts';
import { beginning } from './wire-files.ts';

/** A server that has not answered for so long has ended (chosen). */
const SILENT_MS = 5000;

const post = async (name: RequestName, sent: unknown): Promise<unknown> => {
  const response = await fetch(`ask/${name}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(sent),
  }).catch(() => {
    throw new HostGone();
  });
  if (!response.ok) throw new Error(`the host would not answer ${name} (${response.status})`);
  const isBytes = response.headers.get('content-type') === 'application/octet-stream';
  if (!isBytes) return response.json();
  return { bytes: new Uint8Array(await response.arrayBuffer()) };
};

/** The server tells a page nothing but that it ends. */
const wire: Wire = { ask: post, listen: () => () => undefined };

/**
 * Stays connected to the server, which ends when no page is; says when the page is left, and calls
 * back when the server has ended.
 */
const stayConnected = (onGone: () => void): void => {
  const events = new EventSource('events');
  let silent: ReturnType<typeof setTimeout> | undefined;
  const gone = () => {
    clearTimeout(silent);
    events.close();
    onGone();
  };
  events.addEventListener('gone', gone);
  events.addEventListener('open', () => {
    clearTimeout(silent);
    silent = undefined;
  });
  events.addEventListener('error', () => {
    if (events.readyState === EventSource.CLOSED) gone();
    else silent ??= setTimeout(gone, SILENT_MS);
  });
  window.addEventListener('pagehide', () => {
    navigator.sendBeacon('leave');
  });
};

const picked = async (role: 'log' | 'schedule') => {
  const isLog = role === 'log';
  const files = await pickFiles(isLog ? '' : '.json,.csv,.txt', isLog);
  return filesIn(files, role);
};

/** The host behind the loopback server, for a page in the person's own browser. */
export const browserHost = (): Host => {
  const listeners = new Set<() => void>();
  let isGone = false;
  stayConnected(() => {
    isGone = true;
    for (const listener of listeners) listener();
  });
  return {
    isDesktop: false,
    initial: beginning(wire),
    openLogs: () => picked('log'),
    openSchedule: () => picked('schedule'),
    takeFiles: (files) => filesIn(files, 'unknown'),
    save: (file) => {
      download(file);
      return Promise.resolve({ outcome: 'saved' });
    },
    copyText: (text) =>
      navigator.clipboard.writeText(text).then(
        () => true,
        () => false,
      ),
    keepPreferences: async (preferences) => {
      await ask(wire, 'keep-preferences', preferences);
    },
    ...scheduleShelf(wire),
    ...ruleShelf(wire),
    onFilesOpened: () => () => undefined,
    onMenuCommand: () => () => undefined,
    onGone: (listener) => {
      listeners.add(listener);
      if (isGone) listener();
      return () => listeners.delete(listener);
    },
  };
};
