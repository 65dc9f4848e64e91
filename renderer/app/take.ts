import type { HistoryStore } from '../history/history-store.ts';
import type { Opened } from '../host/host.ts';
import type { AppStore } from '../state/store.ts';

/**
 * Takes files in, by whichever way they came: one log as a firing, several as a kiln's history. A
 * schedule beside them holds for all.
 */
export const createTaker =
  (store: AppStore, history: HistoryStore) =>
  async (opened: Opened): Promise<void> => {
    const { logs } = opened;
    if (logs.length < 2) {
      if (logs.length === 1) history.getState().hide();
      await store.getState().take(opened);
      return;
    }
    // The schedule comes second: it changes what the history goes by, as told by hand.
    const telling = history.getState().open(logs);
    await Promise.all([telling, store.getState().take({ ...opened, logs: [] })]);
  };
