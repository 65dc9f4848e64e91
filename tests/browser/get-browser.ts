/**
 * Finds a browser for the tests of the window; where there is none, gets one: Debian's package as
 * root, else playwright's installer. Fails saying how to help.
 */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { findBrowser, HOW_TO_GET_ONE } from './find-browser.ts';

const run = (command: string, ...args: string[]): boolean => {
  console.log(`> ${command} ${args.join(' ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, args, { stdio: 'inherit', env }).status === 0;
};

const isRoot = process.getuid?.() === 0;

const fromDebian = (): boolean =>
  isRoot &&
  run('apt-get', 'update') &&
  run('apt-get', 'install', '--yes', '--no-install-recommends', 'chromium');

const fromPlaywright = (): boolean => {
  const manifest = createRequire(import.meta.url).resolve('playwright-core/package.json');
  const withSystemPackages = isRoot ? ['--with-deps'] : [];
  const cli = join(dirname(manifest), 'cli.js');
  return run(process.execPath, cli, 'install', ...withSystemPackages, 'chromium');
};

const got = (): string | null => {
  console.log('No Chromium, Chrome or Edge here: getting one for the tests of the window.');
  return fromDebian() || fromPlaywright() ? findBrowser() : null;
};

const browser = findBrowser() ?? got();
if (browser === null) {
  console.error(HOW_TO_GET_ONE);
  process.exitCode = 1;
} else {
  console.log(`browser: ${browser}`);
}
