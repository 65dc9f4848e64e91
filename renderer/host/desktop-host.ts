import type { Told } from '../../electron/host/contract.ts';
import type { Bridge } from '../../electron/host/message-names.ts';
import type { Host } from './interface.ts';
import { filesIn } from './opened.ts';
import { ruleShelf } from './rule-shelf.ts';
import { scheduleShelf } from './schedule-shelf.ts';
import { ask, listen, type Wire } from './transport.ts';
import { beginning, fetchFiles } from './wire-files.ts';

type Listening<Told> = (listener: (told: Told) => void) => () => void;

/** Listens at once: what is told before anyone wants to hear it waits for the first who does. */
const fromTheStart = <Told>(listening: Listening<Told>): Listening<Told> => {
  const waiting: Told[] = [];
  const listeners = new Set<(told: Told) => void>();
  listening((told) => {
    if (listeners.size === 0) waiting.push(told);
    for (const listener of listeners) listener(told);
  });
  return (listener) => {
    listeners.add(listener);
    for (const told of waiting.splice(0)) listener(told);
    return () => void listeners.delete(listener);
  };
};

const wireOver = (bridge: Bridge): Wire => ({
  ask: (name, sent) => bridge.ask[name](sent),
  listen: (name, listener) => bridge.on[name](listener),
});

/** The host behind the preload's bridge: the main process of the desktop window. */
export const desktopHost = (bridge: Bridge): Host => {
  const wire = wireOver(bridge);
  const onFilesHanded = fromTheStart<Told<'files-handed'>>((listener) =>
    listen(wire, 'files-handed', listener),
  );
  return {
    isDesktop: true,
    initial: beginning(wire),
    openLogs: async () => fetchFiles(wire, await ask(wire, 'open-logs', null)),
    openSchedule: async () => fetchFiles(wire, await ask(wire, 'open-schedule', null)),
    takeFiles: (files) => filesIn(files, 'unknown'),
    save: (file) => ask(wire, 'save-file', file),
    copyText: async (text) => {
      await ask(wire, 'copy-text', { text });
      return true;
    },
    keepPreferences: async (preferences) => {
      await ask(wire, 'keep-preferences', preferences);
    },
    ...scheduleShelf(wire),
    ...ruleShelf(wire),
    onFilesOpened: (listener) =>
      onFilesHanded((files) => {
        listener(fetchFiles(wire, files));
      }),
    onMenuCommand: fromTheStart((listener) => listen(wire, 'menu-command', listener)),
    // The main process cannot end without taking its window along.
    onGone: () => () => undefined,
  };
};
