import { spawn } from 'node:child_process';
import { hasScreen } from './has-screen.ts';

/** A program that hands an address to the person's browser has either failed by then or will not. */
const SOON_MS = 3000;

type Opener = readonly [command: string, ...args: string[]];

/** What opens an address on each system; null where there is no screen to open it on. */
export const openerFor = (
  address: string,
  machine: Pick<NodeJS.Process, 'platform' | 'env'>,
): Opener | null => {
  if (!hasScreen(machine)) return null;
  if (machine.platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', address];
  return machine.platform === 'darwin' ? ['open', address] : ['xdg-open', address];
};

/** Opens an address in the person's own browser; false where that cannot be done. */
export const openInBrowser = (address: string): Promise<boolean> => {
  const opener = openerFor(address, process);
  if (opener === null) return Promise.resolve(false);
  const [command, ...args] = opener;
  return new Promise((resolve) => {
    const child = spawn(command, args, { stdio: 'ignore', detached: true });
    const running = setTimeout(() => {
      resolve(true);
    }, SOON_MS);
    const ended = (opened: boolean) => {
      clearTimeout(running);
      resolve(opened);
    };
    child.once('error', () => {
      ended(false);
    });
    child.once('exit', (code) => {
      ended(code === 0);
    });
    child.unref();
  });
};
