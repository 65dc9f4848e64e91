import { join } from 'node:path';
import { expect, test } from 'vitest';
import { userFolder } from '../../../electron/host/user-folder.ts';

// Where Electron's documentation of app.getPath('appData') puts it on each system.
test.each([
  ['win32', { APPDATA: 'roaming' }, join('roaming', 'Afterfire')],
  ['win32', {}, join('home', 'AppData', 'Roaming', 'Afterfire')],
  ['darwin', {}, join('home', 'Library', 'Application Support', 'Afterfire')],
  ['linux', { XDG_CONFIG_HOME: 'config' }, join('config', 'Afterfire')],
  ['linux', {}, join('home', '.config', 'Afterfire')],
] as const)('settings on %s with %j are in %s', (platform, env, folder) => {
  expect(userFolder({ platform, home: 'home', env })).toBe(folder);
});
