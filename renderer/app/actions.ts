import { curveFile, historyFile, legsFile, reportFile, verdictText } from '../export/files.ts';
import type { HistoryStore } from '../history/history-store.ts';
import {
  HostGone,
  type Coming,
  type FileToSave,
  type Host,
  type MenuCommand,
} from '../host/host.ts';
import { historyReport } from '../../core/report/history-report.ts';
import { historyWords, type HistoryWords } from '../../core/wording/history.ts';
import { speechIn } from '../../core/wording/speech.ts';
import { printReport } from '../print/print-report.ts';
import { openSample, type Sample } from '../samples/samples.ts';
import type { OpenFiring } from '../state/firing.ts';
import { secondRun } from '../state/firings.ts';
import { problem, refusedFiles } from '../state/notices.ts';
import { openFiring, otherUnit, type AppStore } from '../state/store.ts';
import { takeUpTyped, typedFile } from '../typed/typed-files.ts';
import type { ViewStore } from '../curve/view-store.ts';
import type { HistoryLog } from '../worker/history-protocol.ts';
import { createTaker } from './take.ts';

/** All that the window's buttons, keys and menus do with the outside. */
export interface Actions {
  readonly openLogs: () => void;
  readonly openSchedule: () => void;
  /** Opens the dialog for readings typed in, on those of the open log where it is one of them. */
  readonly typeIn: () => void;
  readonly openTyped: () => void;
  readonly saveTyped: () => void;
  readonly takeFiles: (files: readonly File[]) => void;
  /** Takes in what the host hands over by itself. */
  readonly receive: (coming: Coming) => void;
  readonly trySample: (sample: Sample) => void;
  readonly saveReport: () => void;
  readonly saveCurve: () => void;
  readonly saveLegs: () => void;
  readonly save: (file: FileToSave) => void;
  readonly copyVerdict: () => void;
  readonly print: () => void;
  /** Lets the person choose the log of a second run of the load on the sheet. */
  readonly joinLog: () => void;
  readonly addToHistory: () => void;
  readonly saveHistory: () => void;
  readonly copyHistory: () => void;
  readonly openFromHistory: (log: HistoryLog) => void;
  readonly backToHistory: () => void;
  readonly switchUnit: () => void;
  readonly obey: (command: MenuCommand) => void;
}

const sentence = (cause: unknown): string =>
  cause instanceof HostGone
    ? cause.message
    : 'That came to a fault of the program; please report what you did.';

/** What the menu changes around an open dialog. All else would happen behind it, unseen. */
const BESIDE_A_DIALOG: ReadonlySet<MenuCommand> = new Set([
  ...(['unit-c', 'unit-f', 'theme-system', 'theme-light', 'theme-dark'] as const),
  ...(['text-larger', 'text-smaller', 'text-normal'] as const),
]);

export const createActions = (
  host: Host,
  store: AppStore,
  view: ViewStore,
  history: HistoryStore,
): Actions => {
  const state = () => store.getState();
  const take = createTaker(store, history);
  const isHistory = (): boolean => history.getState().isShown;

  /** Does something that may fail with the machine, and says so where it does. */
  const attempt = (deed: () => Promise<void>): void => {
    deed().catch((cause: unknown) => {
      if (!(cause instanceof HostGone)) console.error(cause);
      state().notify(problem(sentence(cause)));
    });
  };

  /** Whatever was open in front of the page: what comes in is to be seen. */
  const receive = (coming: Coming): void => {
    if (coming.fileNames.length > 0) state().showDialog(null);
    attempt(() => take(coming));
  };

  const withFiring = (deed: (firing: OpenFiring) => Promise<void>): void => {
    const firing = isHistory() ? null : openFiring(state());
    if (firing) attempt(() => deed(firing));
    else state().notify({ tone: 'said', text: 'Open the log of a firing first.' });
  };

  /** Says what came off, in the place of what did not before. */
  const sayDone = (text: string): void => {
    if (state().notice === null) state().say(text);
    else state().notify({ tone: 'said', text });
  };

  const saved = async (file: FileToSave): Promise<boolean> => {
    const result = await host.save(file);
    if (result.outcome === 'failed') {
      const text = `“${file.fileName}” was not saved: ${result.why}`;
      state().notify(problem(text));
    } else if (result.outcome === 'saved') sayDone(`Saved ${result.fileName ?? file.fileName}.`);
    return result.outcome === 'saved';
  };

  const save = (file: FileToSave): void =>
    attempt(async () => {
      await saved(file);
    });

  const copy = async (text: string, what: string): Promise<void> => {
    const isCopied = await host.copyText(text);
    const said = isCopied
      ? `${what} is on the clipboard.`
      : 'The system would not take the text; select it and copy it by hand.';
    state().notify({ tone: isCopied ? 'said' : 'problem', text: said });
  };

  const withHistory = (deed: (words: HistoryWords) => Promise<void>): void => {
    const { history: told } = history.getState();
    const { unit } = state().preferences;
    if (told.kind === 'told') attempt(() => deed(historyWords(told.history, speechIn(unit))));
  };

  const actions: Omit<Actions, 'obey'> = {
    openLogs: () => attempt(async () => take(await host.openLogs())),
    openSchedule: () => attempt(async () => take(await host.openSchedule())),
    typeIn: () =>
      attempt(async () => {
        await takeUpTyped(store);
        state().showDialog('typed-in');
      }),
    openTyped: () =>
      attempt(async () => {
        history.getState().hide();
        await state().openTyped(new Date());
      }),
    saveTyped: () => save(typedFile(state().typed, new Date())),
    takeFiles: (files) => receive(host.takeFiles(files)),
    receive,
    trySample: (sample) =>
      attempt(async () => {
        const opening = openSample(sample);
        const opened = opening.then(({ log, schedule }) => ({
          logs: [log],
          schedule,
          refused: [],
        }));
        await take({ fileNames: [sample.logName], opened });
      }),
    saveReport: () =>
      isHistory()
        ? actions.saveHistory()
        : withFiring(async ({ document, words }) => {
            await saved(reportFile(document, words.unit));
          }),
    saveCurve: () =>
      withFiring(async ({ document, words }) => {
        await saved(curveFile(document, words.unit));
      }),
    saveLegs: () =>
      withFiring(async ({ document, words }) => {
        await saved(legsFile(document, words.unit));
      }),
    save,
    copyVerdict: () =>
      isHistory()
        ? actions.copyHistory()
        : withFiring(({ words }) => copy(verdictText(words), 'The verdict')),
    print: () =>
      withFiring(({ document, words }) => {
        printReport(document, words.unit);
        return Promise.resolve();
      }),
    joinLog: () =>
      withFiring(async ({ log }) => {
        const { logs, refused } = await (await host.openLogs()).opened;
        const [run] = logs;
        const [refusal] = refusedFiles(refused);
        if (refusal !== undefined) state().notify(problem(refusal));
        if (!run) return;
        if (!isHistory() && openFiring(state())?.log === log) await state().join(secondRun(run));
        else {
          const text = `“${run.fileName}” was not joined: another log was opened meanwhile.`;
          state().notify(problem(text));
        }
      }),
    addToHistory: () =>
      attempt(async () => {
        const { logs, refused } = await (await host.openLogs()).opened;
        const text = refusedFiles(refused).join(' ');
        state().notify(text === '' ? null : problem(text));
        if (logs.length === 0) return;
        if (isHistory()) await history.getState().add(logs);
        else {
          const text = 'Nothing was added: the history was left meanwhile.';
          state().notify(problem(text));
        }
      }),
    saveHistory: () =>
      withHistory(async (words) => {
        await saved(historyFile(words));
      }),
    copyHistory: () => withHistory((words) => copy(historyReport(words), 'The history')),
    openFromHistory: (log) => attempt(() => history.getState().openOne(log)),
    backToHistory: () => attempt(() => history.getState().comeBack()),
    switchUnit: () => {
      const unit = otherUnit(state().preferences.unit);
      state().setPreferences({ unit });
      state().say(unit === 'C' ? 'Degrees Celsius.' : 'Degrees Fahrenheit.');
    },
  };

  const exportBoth = (): void =>
    withFiring(async ({ document, words }) => {
      if (await saved(curveFile(document, words.unit))) {
        await saved(legsFile(document, words.unit));
      }
    });

  const commands: Readonly<Record<MenuCommand, () => void>> = {
    'open-logs': actions.openLogs,
    'open-schedule': actions.openSchedule,
    'type-in': actions.typeIn,
    'save-report': actions.saveReport,
    'export-csv': exportBoth,
    'copy-verdict': actions.copyVerdict,
    print: actions.print,
    'unit-c': () => state().setPreferences({ unit: 'C' }),
    'unit-f': () => state().setPreferences({ unit: 'F' }),
    'theme-system': () => state().setPreferences({ theme: 'system' }),
    'theme-light': () => state().setPreferences({ theme: 'light' }),
    'theme-dark': () => state().setPreferences({ theme: 'dark' }),
    'text-larger': () => state().stepText(1),
    'text-smaller': () => state().stepText(-1),
    'text-normal': () => state().setPreferences({ textPercent: 100 }),
    'zoom-reset': () => view.getState().showWhole(),
    'show-keys': () => state().showDialog('keys'),
    'show-rules': () => state().showDialog('rules'),
    'show-about': () => state().showDialog('about'),
  };

  return {
    ...actions,
    obey: (command) => {
      if (!BESIDE_A_DIALOG.has(command)) state().showDialog(null);
      commands[command]();
    },
  };
};
