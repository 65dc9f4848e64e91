import { join } from 'node:path';

/** What the folder depends on; the defaults are this process's. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly home: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * Where a program of this name keeps a person's settings: the folder that Electron's `userData`
 * names by default, so that the window and the browser share them.
 */
export const userFolder = ({ platform, home, env }: Surroundings, name = 'Afterfire'): string => {
  if (platform === 'win32') return join(env['APPDATA'] ?? join(home, 'AppData', 'Roaming'), name);
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', name);
  return join(env['XDG_CONFIG_HOME'] ?? join(home, '.config'), name);
};
