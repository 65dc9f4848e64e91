import type { HistoryStore } from '../history/history-store.ts';
import type { Coming, Opened } from '../host/host.ts';
import type { AppStore } from '../state/store.ts';

/** Files that take longer to come are waited for in sight (chosen: less would only flicker). */
export const PATIENCE_MS = 150;

/** Files that the person opened and that are not taken in yet. */
interface Opening {
  readonly fileNames: readonly string[];
  /** Its place among all that were opened. */
  readonly number: number;
  /** Settles once its files were taken in, or nobody waits for them any more. */
  readonly over: Promise<void>;
  readonly end: () => void;
  isSlow: boolean;
}

const anOpening = (fileNames: readonly string[], number: number): Opening => {
  let end = (): void => undefined;
  const over = new Promise<void>((done) => {
    end = done;
  });
  return { fileNames, number, over, end, isSlow: false };
};

/** A history says itself by which schedule it goes: that one is ready need not stand over it. */
const quietOn = (store: AppStore, history: HistoryStore): void => {
  const { notice, notify } = store.getState();
  if (history.getState().isShown && notice?.tone === 'said') notify(null);
};

/** One log is a firing, several are a kiln's history. A schedule beside them holds for all. */
const takeIn = async (store: AppStore, history: HistoryStore, opened: Opened): Promise<void> => {
  const { logs } = opened;
  if (logs.length < 2) {
    if (logs.length === 1) history.getState().hide();
    await store.getState().take(opened);
    quietOn(store, history);
    return;
  }
  // The schedule comes second: it changes what the history goes by, as told by hand.
  const telling = history.getState().open(logs);
  await Promise.all([telling, store.getState().take({ ...opened, logs: [] })]);
  quietOn(store, history);
};

/**
 * Takes files in, by whichever way they came, once their bytes are there. The log that was opened
 * last stays, whichever comes first; a schedule waits for the log that was opened before it.
 */
export const createTaker = (store: AppStore, history: HistoryStore) => {
  let begun = 0;
  /** The last opening, by its number, whose logs were taken in. */
  let lastWithLogs = 0;
  let underWay: readonly Opening[] = [];

  const show = (): void => {
    const { arriving, showArriving } = store.getState();
    const slow = underWay.findLast(({ isSlow, number }) => isSlow && number > lastWithLogs);
    if (slow?.fileNames === arriving?.fileNames) return;
    showArriving(slow ? { fileNames: slow.fileNames, stop } : null);
  };

  const leave = (opening: Opening): void => {
    underWay = underWay.filter((one) => one !== opening);
    opening.end();
    show();
  };

  function stop(): void {
    for (const opening of underWay) leave(opening);
    store.getState().say('Reading was stopped.');
  }

  const isWanted = (opening: Opening): boolean => underWay.includes(opening);

  const land = async (opening: Opening, opened: Opened): Promise<void> => {
    if (opened.logs.length > 0) {
      if (opening.number < lastWithLogs) return;
      lastWithLogs = opening.number;
    } else {
      const before = underWay.filter(({ number }) => number < opening.number);
      await Promise.all(before.map(({ over }) => over));
      if (!isWanted(opening)) return;
    }
    const taking = takeIn(store, history, opened);
    leave(opening);
    await taking;
  };

  return async ({ fileNames, opened }: Coming): Promise<void> => {
    const opening = anOpening(fileNames, ++begun);
    underWay = [...underWay, opening];
    const patience = setTimeout(() => {
      opening.isSlow = true;
      show();
    }, PATIENCE_MS);
    try {
      const files = await opened;
      clearTimeout(patience);
      opening.isSlow = false;
      if (isWanted(opening)) await land(opening, files);
    } finally {
      clearTimeout(patience);
      leave(opening);
    }
  };
};
