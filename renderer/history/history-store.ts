import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Options } from '../../core/model/options.ts';
import type { OpenedLog } from '../host/host.ts';
import type { AppState, AppStore } from '../state/store.ts';
import { retold, toldOfTheKiln } from '../state/told.ts';
import type { Historian } from '../worker/historian.ts';
import type { HistoryLog, HistoryTold } from '../worker/history-protocol.ts';
import type { LogFile } from '../worker/protocol.ts';

/** What the page shows of several logs. */
export type KilnHistory =
  | { readonly kind: 'none' }
  | { readonly kind: 'reading'; readonly done: number; readonly of: number }
  | ({ readonly kind: 'told' } & HistoryTold)
  | { readonly kind: 'failed' };

export interface HistoryState {
  readonly logs: readonly HistoryLog[];
  readonly history: KilnHistory;
  /** Whether the history stands on the page, and not a firing. */
  readonly isShown: boolean;
  /** The finding that was chosen, by its place in the history. */
  readonly selected: number | null;

  /** Begins a history with these logs; what was told of the firing on the page goes with it. */
  readonly open: (logs: readonly OpenedLog[]) => Promise<void>;
  /** Adds logs to the history. */
  readonly add: (logs: readonly OpenedLog[]) => Promise<void>;
  /** Takes one log out of it. */
  readonly leaveOut: (log: HistoryLog) => Promise<void>;
  /** Opens one of its logs on the sheet. */
  readonly openOne: (log: HistoryLog) => Promise<void>;
  /** Back from a sheet; what was told there of one of its logs is kept with that log. */
  readonly comeBack: () => Promise<void>;
  /** Lets a sheet stand on the page. */
  readonly hide: () => void;
  /** Ends a reading under way: back to what was told before, or to nothing. */
  readonly stop: () => void;
  readonly close: () => void;
  readonly select: (finding: number | null) => void;
}

export type HistoryStore = StoreApi<HistoryState>;

/** How one file is read, and which cones were seen beside one load, hold for that log alone. */
const ofOne = ({ reading, observedCones, reference }: Options): Options =>
  retold({}, { reading, observedCones, reference });

/** What holds for every firing of a history. */
const ofAll = (told: Options): Options =>
  retold(told, { reading: undefined, observedCones: undefined, reference: undefined });

const isSame = (a: Options, b: Options): boolean => JSON.stringify(a) === JSON.stringify(b);

const kept = ({ fileName, bytes }: OpenedLog): HistoryLog => ({
  fileName,
  blob: new Blob([bytes]),
  own: {},
});

const NOTHING = { logs: [], history: { kind: 'none' }, isShown: false, selected: null } as const;

interface Sheet {
  readonly of: HistoryLog;
  readonly file: LogFile;
}

const fileOnSheet = ({ firing }: AppState): LogFile | null =>
  firing.kind === 'empty' ? null : firing.log;

/**
 * The history of a kiln over several logs. While it stands on the page, what is told in the panel
 * holds for all of its firings, and the answer follows at once.
 */
export const createHistoryStore = (historian: Historian, app: AppStore): HistoryStore =>
  createStore<HistoryState>((set, get) => {
    /** What was told of all firings when the history was last on the page. */
    let toldOfAll: Options = {};
    /** The log that was opened from the history last. */
    let sheet: Sheet | null = null;
    /** Whether something was told on sheets that the history does not go by yet. */
    let isStale = false;
    let rulesUsed: AppState['rules'] = [];
    /** The last history that was told whole, and by what. */
    let last: (Pick<HistoryState, 'logs' | 'history'> & { readonly by: Options }) | null = null;

    /** What was told of this kiln's firings is no matter to what comes next on the page. */
    const forgetTold = (): void => {
      const { told, setTold } = app.getState();
      void setTold(toldOfTheKiln(told));
    };

    const tell = async (): Promise<void> => {
      const { logs } = get();
      const { told, rules } = app.getState();
      toldOfAll = ofAll(told);
      rulesUsed = rules;
      isStale = false;
      const reading = (done: number) => ({ kind: 'reading', done, of: logs.length }) as const;
      set({ history: reading(0), selected: null });
      const request = { logs, options: toldOfAll, rules };
      const outcome = await historian.ask(request, (done) => set({ history: reading(done) }));
      if (outcome.kind === 'superseded') return;
      last = { logs, history: outcome, by: request.options };
      set({ history: outcome });
    };

    const tellThese = async (logs: readonly HistoryLog[]): Promise<void> => {
      if (logs.length === 0) {
        get().close();
        return;
      }
      set({ logs, isShown: true });
      await tell();
    };

    /** Keeps with a log what was told of it on its sheet, and what was told there of all. */
    const noteSheet = (): void => {
      const { told, firing } = app.getState();
      if (sheet === null || fileOnSheet(app.getState()) !== sheet.file) return;
      const { of, file } = sheet;
      const all = ofAll(told);
      isStale ||= !isSame(all, toldOfAll);
      toldOfAll = all;
      // A rule finds its logs by itself, as long as it is kept.
      const isByRule = firing.kind === 'open' && firing.rule !== null;
      const own = ofOne(isByRule ? retold(told, { reading: of.own.reading }) : told);
      if (isSame(own, of.own)) return;
      isStale = true;
      const log = { ...of, own };
      sheet = { of: log, file };
      set({ logs: get().logs.map((one) => (one === of ? log : one)) });
    };

    app.subscribe((now, before) => {
      const isChanged = now.rules !== before.rules || !isSame(ofAll(now.told), toldOfAll);
      const { isShown, history } = get();
      if (isShown && history.kind !== 'none' && isChanged) void tell();
    });

    return {
      ...NOTHING,
      open: async (logs) => {
        const { firing, told, closeFiring, setTold } = app.getState();
        if (get().isShown) get().close();
        else if (firing.kind !== 'empty') closeFiring();
        // As with one log: what was told beside a log that was refused is meant for these.
        if (firing.kind === 'refused') await setTold(ofAll(told));
        sheet = null;
        last = null;
        await tellThese(logs.map(kept));
      },
      add: (logs) => tellThese([...get().logs, ...logs.map(kept)]),
      leaveOut: (left) => tellThese(get().logs.filter((log) => log !== left)),
      openOne: async (log) => {
        const bytes = new Uint8Array(await log.blob.arrayBuffer());
        set({ isShown: false });
        const told = retold(toldOfAll, log.own);
        const opening = app.getState().openLog({ fileName: log.fileName, bytes }, null, told);
        const file = fileOnSheet(app.getState());
        sheet = file && { of: log, file };
        await opening;
      },
      comeBack: async () => {
        noteSheet();
        sheet = null;
        app.getState().closeFiring();
        await app.getState().setTold(toldOfAll);
        set({ isShown: true });
        if (isStale || app.getState().rules !== rulesUsed) await tell();
      },
      hide: () => {
        noteSheet();
        if (!get().isShown) return;
        set({ isShown: false });
        forgetTold();
      },
      stop: () => {
        historian.stop();
        if (last === null) {
          get().close();
          return;
        }
        const { logs, history, by } = last;
        toldOfAll = by;
        set({ logs, history });
        void app.getState().setTold(by);
        app.getState().say('Reading was stopped.');
      },
      close: () => {
        historian.stop();
        const { isShown } = get();
        sheet = null;
        last = null;
        set(NOTHING);
        if (isShown) forgetTold();
      },
      select: (selected) => set({ selected }),
    };
  });
