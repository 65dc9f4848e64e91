import { DEFAULT_PREFERENCES } from '../contract.ts';
import { handedFiles, type NamedFile } from '../handed-files.ts';
import { keptRules } from '../kept-rules.ts';
import { keptSchedules } from '../kept-schedules.ts';
import type { Page } from '../page.ts';
import { keptPreferences } from '../preferences.ts';
import type { Patience } from './attendance.ts';
import { serveLoopback, type Loopback } from './server.ts';

/**
 * Serves the page to a browser on this machine, with files to begin with.
 *
 * @param folder where the person's preferences, schedules and reading rules are kept
 * @throws Error in the system's words where no port can be had
 */
export const serveFiring = (
  page: Page,
  begin: readonly NamedFile[],
  folder: string,
  patience?: Patience,
): Promise<Loopback> => {
  const files = handedFiles();
  // The same tickets for every visit: a reload begins anew with the same files.
  const begun = files.hand(begin);
  return serveLoopback(
    page,
    {
      'open-session': () => {
        const preferences = keptPreferences.read(folder) ?? DEFAULT_PREFERENCES;
        const schedules = keptSchedules.read(folder);
        const rules = keptRules.read(folder);
        return Promise.resolve({ files: begun, preferences, schedules, rules });
      },
      'read-file': (sent) => files.read(sent),
      'keep-preferences': (preferences) => {
        keptPreferences.keep(folder, preferences);
        return Promise.resolve(null);
      },
      'keep-schedule': (sent) => Promise.resolve(keptSchedules.keep(folder, sent)),
      'keep-rule': (sent) => Promise.resolve(keptRules.keep(folder, sent)),
      'forget-rule': (sent) => Promise.resolve(keptRules.forget(folder, sent)),
      'forget-schedule': (sent) => Promise.resolve(keptSchedules.forget(folder, sent)),
    },
    patience,
  );
};
