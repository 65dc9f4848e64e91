import { app, clipboard, dialog, nativeTheme, session } from 'electron';
import { join } from 'node:path';
import { registerPageScheme, servePage } from './app-page.ts';
import { chooseLogs, chooseSchedule, saveFile } from './dialogs.ts';
import { DEFAULT_PREFERENCES, type Preferences } from './host/contract.ts';
import { firingFiles, namedFiles, zFiringFiles } from './host/firing-arguments.ts';
import { handedFiles, type NamedFile } from './host/handed-files.ts';
import { keptRules } from './host/kept-rules.ts';
import { keptSchedules } from './host/kept-schedules.ts';
import { loadPage } from './host/page.ts';
import { keptPreferences } from './host/preferences.ts';
import { HANDED_ON, SHOWN } from './host/shown.ts';
import { lockDownContents, lockDownProcess, lockDownSession } from './lock-down.ts';
import { showMenu } from './menu.ts';
import { answerPage, type Answers } from './messages.ts';
import { theWindow } from './the-window.ts';

const PAGE_FOLDER = join(import.meta.dirname, '../renderer');

app.setName('Afterfire');
lockDownProcess();
registerPageScheme();

let preferences: Preferences = DEFAULT_PREFERENCES;
const files = handedFiles();

/** Tells whoever started the program; they may have gone, and with them the reader of its output. */
const sayToStarter = (word: string, then = (): void => undefined): void => {
  process.stdout.on('error', () => undefined).write(`${word}\n`, then);
};

const window = theWindow(files, () => {
  sayToStarter(SHOWN);
});

const apply = (changed: Preferences): void => {
  preferences = changed;
  nativeTheme.themeSource = changed.theme;
  const { platform } = process;
  showMenu({ platform, preferences, hasDevTools: !app.isPackaged, choose: window.choose });
};

const handChosen = (chosen: readonly NamedFile[]) => {
  for (const { path } of chosen) app.addRecentDocument(path);
  return files.hand(chosen);
};

/** Where the person's settings are kept. */
const settings = (): string => app.getPath('userData');

const answers: Answers = {
  'open-session': () => {
    const schedules = keptSchedules.read(settings());
    const rules = keptRules.read(settings());
    return Promise.resolve({ files: window.begin(), preferences, schedules, rules });
  },
  'open-logs': async () => handChosen(await chooseLogs(window.current())),
  'open-schedule': async () => handChosen(await chooseSchedule(window.current())),
  'read-file': (sent) => {
    window.isRead(sent.ticket);
    return files.read(sent);
  },
  'save-file': (sent) => saveFile(window.current(), sent),
  'copy-text': async ({ text }) => {
    await clipboard.writeText(text);
    return null;
  },
  'keep-preferences': (changed) => {
    apply(changed);
    keptPreferences.keep(settings(), changed);
    return Promise.resolve(null);
  },
  'keep-schedule': (sent) => Promise.resolve(keptSchedules.keep(settings(), sent)),
  'keep-rule': (sent) => Promise.resolve(keptRules.keep(settings(), sent)),
  'forget-rule': (sent) => Promise.resolve(keptRules.forget(settings(), sent)),
  'forget-schedule': (sent) => Promise.resolve(keptSchedules.forget(settings(), sent)),
};

const begin = async (): Promise<void> => {
  await app.whenReady();
  const page = await loadPage(PAGE_FOLDER);
  lockDownSession(session.defaultSession);
  servePage(session.defaultSession, page);
  answerPage(answers);
  apply(keptPreferences.read(settings()) ?? DEFAULT_PREFERENCES);
  window.show();
};

const listenToSystem = (): void => {
  app.on('second-instance', (_event, _argv, _where, told) => {
    const second = zFiringFiles.safeParse(told);
    window.receive(second.success ? namedFiles(second.data) : []);
  });
  app.on('open-file', (event, path) => {
    event.preventDefault();
    window.receive([{ path, role: 'unknown' }]);
  });
  app.on('web-contents-created', (_event, contents) => {
    lockDownContents(contents);
  });
  app.on('activate', () => {
    window.receive([]);
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
};

const given = firingFiles(process.argv.slice(app.isPackaged ? 1 : 2), process.cwd());
if (app.requestSingleInstanceLock(given)) {
  listenToSystem();
  window.receive(namedFiles(given));
  begin().catch((cause: unknown) => {
    dialog.showErrorBox('Afterfire could not start', String(cause));
    app.exit(1);
  });
} else {
  sayToStarter(HANDED_ON, () => {
    app.quit();
  });
}
