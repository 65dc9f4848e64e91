import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { createTaker, PATIENCE_MS } from '../../../renderer/app/take.ts';
import type { HistoryStore } from '../../../renderer/history/history-store.ts';
import type { Opened } from '../../../renderer/host/host.ts';
import { createAppStore } from '../../../renderer/state/store.ts';

const SCHEDULE = {
  fileName: 'mine.schedule.json',
  text: '{"name":"Mine","segments":[{"ratePerHour":100,"target":1000}]}',
};
const aLog = (fileName: string): Opened => ({
  logs: [{ fileName, bytes: new Uint8Array([1]) }],
  schedule: null,
  refused: [],
});
const aSchedule: Opened = { logs: [], schedule: SCHEDULE, refused: [] };

const aWindow = () => {
  const never = new Promise<never>(() => undefined);
  const store = createAppStore(
    { ask: () => never, fit: () => never, cancel: () => undefined },
    { preferences: DEFAULT_PREFERENCES, schedules: [] },
    { keepPreferences: () => undefined, shelf: { keep: () => never, forget: () => never } },
  );
  const history = { getState: () => ({ hide: () => undefined }) } as unknown as HistoryStore;
  const take = createTaker(store, history);
  /** Opens files whose bytes come when the test says so. */
  const open = (fileName: string) => {
    let bring: (opened: Opened) => void = () => undefined;
    let fail: (cause: Error) => void = () => undefined;
    const opened = new Promise<Opened>((resolve, reject) => {
      [bring, fail] = [resolve, reject];
    });
    const taking = take({ fileNames: [fileName], opened });
    const settle = () => vi.advanceTimersByTimeAsync(0);
    return {
      taking,
      bring: (files: Opened) => {
        bring(files);
        return settle();
      },
      fail: (cause: Error) => {
        fail(cause);
      },
    };
  };
  /** The log that the page shows or reads. */
  const onPage = (): string | null => {
    const { firing } = store.getState();
    return firing.kind === 'empty' ? null : firing.log.fileName;
  };
  return { open, onPage, state: store.getState };
};

let window: ReturnType<typeof aWindow>;
beforeEach(() => {
  vi.useFakeTimers();
  window = aWindow();
});
afterEach(() => {
  vi.useRealTimers();
});
const arriving = () => window.state().arriving?.fileNames ?? null;
const wait = () => vi.advanceTimersByTimeAsync(PATIENCE_MS + 1);

describe('of logs opened one after the other', () => {
  test('the last stays, whichever comes first', async () => {
    const [slow, quick] = [window.open('a.csv'), window.open('b.csv')];
    await quick.bring(aLog('b.csv'));
    expect(window.onPage()).toBe('b.csv');
    await slow.bring(aLog('a.csv'));
    expect(window.onPage()).toBe('b.csv');
  });

  test('the first is shown until the last is there', async () => {
    const [first, last] = [window.open('a.csv'), window.open('b.csv')];
    await first.bring(aLog('a.csv'));
    expect(window.onPage()).toBe('a.csv');
    await last.bring(aLog('b.csv'));
    expect(window.onPage()).toBe('b.csv');
  });
});

describe('a schedule', () => {
  test('goes with the log that was opened before it, which comes later', async () => {
    const [log, schedule] = [window.open('a.csv'), window.open('mine.schedule.json')];
    await schedule.bring(aSchedule);
    expect(window.state().told.schedule).toBeUndefined();
    await log.bring(aLog('a.csv'));
    expect(window.onPage()).toBe('a.csv');
    expect(window.state().told.schedule?.name).toBe('Mine');
  });

  test('is taken in though a log opened after it came first', async () => {
    const [schedule, log] = [window.open('mine.schedule.json'), window.open('a.csv')];
    await log.bring(aLog('a.csv'));
    await schedule.bring(aSchedule);
    expect(window.onPage()).toBe('a.csv');
    expect(window.state().told.schedule?.name).toBe('Mine');
  });

  test('that came with a log is dropped with it', async () => {
    const [both, log] = [window.open('a.csv'), window.open('b.csv')];
    await log.bring(aLog('b.csv'));
    await both.bring({ ...aLog('a.csv'), schedule: SCHEDULE });
    expect(window.onPage()).toBe('b.csv');
    expect(window.state().told.schedule).toBeUndefined();
  });
});

describe('files that are slow to come', () => {
  test('are waited for in sight, those that are not are not', async () => {
    const log = window.open('a.csv');
    expect(arriving()).toBeNull();
    await wait();
    expect(arriving()).toEqual(['a.csv']);
    await log.bring(aLog('a.csv'));
    expect(arriving()).toBeNull();
    const quick = window.open('b.csv');
    await quick.bring(aLog('b.csv'));
    await wait();
    expect(arriving()).toBeNull();
  });

  test('are waited for no longer once they are stopped, and change nothing when they come', async () => {
    const log = window.open('a.csv');
    await wait();
    window.state().arriving?.stop();
    expect(arriving()).toBeNull();
    await log.bring(aLog('a.csv'));
    expect(window.onPage()).toBeNull();
    expect(window.state().announcement).toBe('Reading was stopped.');
  });

  test('are not waited for where a log opened later is there', async () => {
    const [, quick] = [window.open('a.csv'), window.open('b.csv')];
    await wait();
    await quick.bring(aLog('b.csv'));
    expect(arriving()).toBeNull();
  });

  test('that never come leave nothing that waits, and say why', async () => {
    const log = window.open('a.csv');
    await wait();
    log.fail(new Error('gone'));
    await expect(log.taking).rejects.toThrow('gone');
    expect(arriving()).toBeNull();
  });
});
