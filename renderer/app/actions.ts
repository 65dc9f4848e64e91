import { curveFile, legsFile, reportFile, verdictText } from '../export/files.ts';
import { HostGone, type FileToSave, type Host, type MenuCommand } from '../host/host.ts';
import { printReport } from '../print/print-report.ts';
import { openSample, type Sample } from '../samples/samples.ts';
import type { OpenFiring } from '../state/firing.ts';
import { openFiring, otherUnit, type AppStore } from '../state/store.ts';
import type { ViewStore } from '../curve/view-store.ts';

/** All that the window's buttons, keys and menus do with the outside. */
export interface Actions {
  readonly openLogs: () => void;
  readonly openSchedule: () => void;
  readonly takeFiles: (files: readonly File[]) => void;
  readonly trySample: (sample: Sample) => void;
  readonly saveReport: () => void;
  readonly saveCurve: () => void;
  readonly saveLegs: () => void;
  readonly save: (file: FileToSave) => void;
  readonly copyVerdict: () => void;
  readonly print: () => void;
  readonly switchUnit: () => void;
  readonly obey: (command: MenuCommand) => void;
}

const sentence = (cause: unknown): string =>
  cause instanceof HostGone
    ? cause.message
    : 'That came to a fault of the program; please report what you did.';

export const createActions = (host: Host, store: AppStore, view: ViewStore): Actions => {
  const state = () => store.getState();

  /** Does something that may fail with the machine, and says so where it does. */
  const attempt = (deed: () => Promise<void>): void => {
    deed().catch((cause: unknown) => {
      if (!(cause instanceof HostGone)) console.error(cause);
      state().notify({ tone: 'problem', text: sentence(cause) });
    });
  };

  const withFiring = (deed: (firing: OpenFiring) => Promise<void>): void => {
    const firing = openFiring(state());
    if (firing) attempt(() => deed(firing));
    else state().notify({ tone: 'said', text: 'Open the log of a firing first.' });
  };

  const saved = async (file: FileToSave): Promise<boolean> => {
    const result = await host.save(file);
    if (result.outcome === 'failed') {
      const text = `“${file.fileName}” was not saved: ${result.why}`;
      state().notify({ tone: 'problem', text });
    } else if (result.outcome === 'saved') state().say(`Saved ${file.fileName}.`);
    return result.outcome === 'saved';
  };

  const save = (file: FileToSave): void =>
    attempt(async () => {
      await saved(file);
    });

  const actions: Omit<Actions, 'obey'> = {
    openLogs: () => attempt(async () => state().take(await host.openLogs())),
    openSchedule: () => attempt(async () => state().take(await host.openSchedule())),
    takeFiles: (files) => attempt(async () => state().take(await host.takeFiles(files))),
    trySample: (sample) =>
      attempt(async () => {
        const { log, schedule } = await openSample(sample);
        state().notify(null);
        await state().openLog(log, schedule);
      }),
    saveReport: () =>
      withFiring(async ({ document, words }) => {
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
      withFiring(async ({ words }) => {
        const isCopied = await host.copyText(verdictText(words));
        const text = isCopied
          ? 'The verdict is on the clipboard.'
          : 'The system would not take the text; select it and copy it by hand.';
        state().notify({ tone: isCopied ? 'said' : 'problem', text });
      }),
    print: () =>
      withFiring(({ document, words }) => {
        printReport(document, words.unit);
        return Promise.resolve();
      }),
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
    'show-about': () => state().showDialog('about'),
  };

  return { ...actions, obey: (command) => commands[command]() };
};
