import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { DEFAULT_PREFERENCES, zPreferences, type Preferences } from './contract.ts';
import { writeWhole } from './files.ts';

const FILE_NAME = 'preferences.json';

/** The kept preferences; the defaults where there are none yet or they cannot be read. */
export const readPreferences = async (folder: string): Promise<Preferences> => {
  try {
    return zPreferences.parse(JSON.parse(await readFile(join(folder, FILE_NAME), 'utf8')));
  } catch {
    return DEFAULT_PREFERENCES;
  }
};

/**
 * Keeps the preferences for the next session. A folder that may not be written to is no reason to
 * disturb anyone: they hold for this session all the same.
 */
export const keepPreferences = async (folder: string, preferences: Preferences): Promise<void> => {
  const text = `${JSON.stringify(preferences, null, 2)}\n`;
  await writeWhole(join(folder, FILE_NAME), text).catch(() => undefined);
};
