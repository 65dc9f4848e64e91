import { describe, expect, test, vi } from 'vitest';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { EVENT_NAMES, REQUEST_NAMES, type Bridge } from '../../../electron/host/message-names.ts';
import type { Coming } from '../../../renderer/host/host.ts';
import { desktopHost } from '../../../renderer/host/desktop-host.ts';

/** A bridge that answers as it is told to, and tells what it is told to. */
const aBridge = (answers: Partial<Record<(typeof REQUEST_NAMES)[number], unknown>>) => {
  const asked: [name: string, sent: unknown][] = [];
  const listeners = new Map<string, Set<(told: unknown) => void>>();
  const ask = (name: (typeof REQUEST_NAMES)[number]) => (sent: unknown) => {
    asked.push([name, sent]);
    return Promise.resolve(answers[name]);
  };
  const on = (name: string) => (listener: (told: unknown) => void) => {
    const all = listeners.get(name) ?? new Set();
    listeners.set(name, all.add(listener));
    return () => {
      all.delete(listener);
    };
  };
  const bridge: Bridge = {
    ask: Object.fromEntries(REQUEST_NAMES.map((name) => [name, ask(name)])) as Bridge['ask'],
    on: Object.fromEntries(EVENT_NAMES.map((name) => [name, on(name)])) as Bridge['on'],
  };
  const tell = (name: string, told: unknown) => {
    for (const listener of listeners.get(name) ?? []) listener(told);
  };
  return { bridge, asked, tell };
};

const HANDED = [{ ticket: 'T', fileName: 'a.csv', role: 'log' }];
const A_SCHEDULE = readSchedule('rate_per_hour,target\n100,1000\n', 'Mine.csv');
const bytes = () => new TextEncoder().encode('a');

describe('the page over the bridge', () => {
  test('begins with the files that were handed over, once', async () => {
    const { bridge, asked } = aBridge({
      'open-session': { files: HANDED, preferences: DEFAULT_PREFERENCES, schedules: [] },
      'read-file': { bytes: bytes() },
    });
    const host = desktopHost(bridge);
    const [first, second] = [await host.initial(), await host.initial()];
    expect(second).toBe(first);
    expect(first.preferences).toEqual(DEFAULT_PREFERENCES);
    expect(first.coming.fileNames).toEqual(['a.csv']);
    expect((await first.coming.opened).logs.map(({ fileName }) => fileName)).toEqual(['a.csv']);
    expect(asked).toEqual([
      ['open-session', null],
      ['read-file', { ticket: 'T' }],
    ]);
  });

  test('hears what it was told before anyone listened, once', () => {
    const { bridge, tell } = aBridge({ 'read-file': { bytes: bytes() } });
    const host = desktopHost(bridge);
    tell('files-handed', HANDED);
    tell('menu-command', 'open-logs');
    const [heard, commands] = [vi.fn(), vi.fn()];
    host.onFilesOpened(heard);
    host.onMenuCommand(commands)();
    host.onMenuCommand(commands);
    expect(heard).toHaveBeenCalledTimes(1);
    expect(commands.mock.calls).toEqual([['open-logs']]);
  });

  test('has nothing where the person changes their mind', async () => {
    const { bridge } = aBridge({ 'open-logs': [], 'open-schedule': [] });
    const nothing = { logs: [], schedule: null, refused: [] };
    expect(await (await desktopHost(bridge).openLogs()).opened).toEqual(nothing);
    expect(await (await desktopHost(bridge).openSchedule()).opened).toEqual(nothing);
  });

  test('is told of files and of choices in the menu until it no longer listens', async () => {
    const { bridge, tell } = aBridge({ 'read-file': { refused: 'there is no such file' } });
    const host = desktopHost(bridge);
    const [files, commands] = [vi.fn<(coming: Coming) => void>(), vi.fn()];
    const stop = [host.onFilesOpened(files), host.onMenuCommand(commands)];
    tell('files-handed', HANDED);
    tell('menu-command', 'print');
    const why = 'there is no such file';
    expect(files).toHaveBeenCalledOnce();
    const [coming] = files.mock.calls[0]!;
    expect(coming.fileNames).toEqual(['a.csv']);
    expect(await coming.opened).toEqual({
      logs: [],
      schedule: null,
      refused: [{ fileName: 'a.csv', role: 'log', why }],
    });
    expect(commands.mock.calls).toEqual([['print']]);
    for (const end of stop) end();
    tell('menu-command', 'print');
    expect(commands).toHaveBeenCalledOnce();
  });

  test('takes nothing from its host that is not in the contract', async () => {
    const session = {
      files: [{ ...HANDED[0], path: '/a.csv' }],
      preferences: DEFAULT_PREFERENCES,
      schedules: [],
    };
    await expect(
      desktopHost(aBridge({ 'open-session': session }).bridge).initial(),
    ).rejects.toThrow();
    const { bridge, tell } = aBridge({});
    const listener = vi.fn();
    desktopHost(bridge).onMenuCommand(listener);
    expect(() => {
      tell('menu-command', 'format-disk');
    }).toThrow();
    expect(listener).not.toHaveBeenCalled();
  });

  test('passes on what is saved, copied and kept', async () => {
    const { bridge, asked } = aBridge({
      'save-file': { outcome: 'saved' },
      'copy-text': null,
      'keep-preferences': null,
      'keep-schedule': [A_SCHEDULE],
      'forget-schedule': [],
    });
    const host = desktopHost(bridge);
    const file = { fileName: 'a.csv', kind: 'text/csv' as const, text: 'a' };
    expect(await host.save(file)).toEqual({ outcome: 'saved' });
    expect(await host.copyText('verdict')).toBe(true);
    await host.keepPreferences(DEFAULT_PREFERENCES);
    expect(await host.keepSchedule(A_SCHEDULE, 'Former')).toEqual([A_SCHEDULE]);
    expect(await host.forgetSchedule('Mine')).toEqual([]);
    expect(asked).toEqual([
      ['save-file', file],
      ['copy-text', { text: 'verdict' }],
      ['keep-preferences', DEFAULT_PREFERENCES],
      ['keep-schedule', { schedule: A_SCHEDULE, insteadOf: 'Former' }],
      ['forget-schedule', { name: 'Mine' }],
    ]);
  });
});
