import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openerFor } from '../../cli/open-browser.ts';
import { openDesktop } from '../../cli/open-desktop.ts';
import { HANDED_ON, SHOWN } from '../../electron/host/shown.ts';
import { inFolder, keepingIo } from './terminal.ts';

afterEach(() => {
  vi.unstubAllEnvs();
});

/** A project whose `electron` is a script of ours: the runtime, and what fetches it. */
const projectWith = (folder: string, runtime: string | null, install = 'process.exit(1)') => {
  const electron = join(folder, 'node_modules/electron');
  mkdirSync(join(electron, 'dist'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"type":"commonjs"}');
  writeFileSync(join(electron, 'package.json'), '{"name":"electron","version":"0.0.0"}');
  writeFileSync(join(electron, 'install.js'), install);
  const program = join(electron, 'dist/electron');
  const script = (text: string) => `#!${process.execPath}\n${text}`;
  if (runtime !== null) {
    writeFileSync(program, script(runtime));
    chmodSync(program, 0o755);
    writeFileSync(join(electron, 'path.txt'), 'electron');
  }
  return folder;
};

const FIRING = { logs: ['a.csv'], schedule: 's.json' };

const open = async (project: string, limitMs?: number) => {
  vi.stubEnv('DISPLAY', ':0');
  const { io, kept } = keepingIo();
  return { desktop: await openDesktop(project, FIRING, io, limitMs), ...kept };
};

describe.skipIf(process.platform === 'win32')('the desktop window', () => {
  it('is there once its program says so, and closed when that ends', async () => {
    await inFolder(async (folder) => {
      const seen = join(folder, 'seen.json');
      const runtime = `
        require('node:fs').writeFileSync(${JSON.stringify(seen)}, JSON.stringify(process.argv));
        console.log(${JSON.stringify(SHOWN)});
        setTimeout(() => {}, 300);`;
      const { desktop, out } = await open(projectWith(folder, runtime));
      if (!('ended' in desktop)) throw new Error(desktop.failed);
      expect(await desktop.ended).toBe('closed');
      expect(out).toBe('');
      const { default: argv } = (await import(seen, { with: { type: 'json' } })) as {
        default: string[];
      };
      expect(argv.slice(2)).toEqual([folder, '--schedule', 's.json', 'a.csv']);
    });
  });

  it('counts a program that hands its files to an open window and ends', async () => {
    await inFolder(async (folder) => {
      const runtime = `console.log(${JSON.stringify(HANDED_ON)})`;
      const { desktop } = await open(projectWith(folder, runtime));
      expect(desktop).toHaveProperty('ended');
    });
  });

  it.each([
    ['process.exit(3)', { broke: 'exit code 3' }],
    ["process.kill(process.pid, 'SIGSEGV')", { broke: 'SIGSEGV' }],
    ["process.kill(process.pid, 'SIGTERM')", 'closed'],
  ])('that ends with %s is told from one that was closed', async (ending, end) => {
    await inFolder(async (folder) => {
      const runtime = `console.log(${JSON.stringify(SHOWN)}); setTimeout(() => ${ending}, 200);`;
      const { desktop } = await open(projectWith(folder, runtime));
      if (!('ended' in desktop)) throw new Error(desktop.failed);
      expect(await desktop.ended).toEqual(end);
    });
  });

  it.each([
    ['a runtime that ends with an error', 'process.exit(1)', 'its runtime could not be started'],
    ['a runtime that ends without a word', 'process.exit(0)', 'it ended without a window'],
    ['a runtime that hangs', 'setInterval(() => {}, 1000)', 'it did not come up in time'],
  ])('is not to be had from %s', async (_what, runtime, failed) => {
    await inFolder(async (folder) => {
      const { desktop } = await open(projectWith(folder, runtime), 1000);
      expect(desktop).toEqual({ failed });
    });
  });

  it('is not to be had from a file that does not run', async () => {
    await inFolder(async (folder) => {
      const project = projectWith(folder, 'x');
      chmodSync(join(folder, 'node_modules/electron/dist/electron'), 0o644);
      expect((await open(project)).desktop).toEqual({ failed: 'its runtime could not be started' });
    });
  });

  it('is fetched where it is not there yet', async () => {
    await inFolder(async (folder) => {
      const install = `
        const { writeFileSync, chmodSync } = require('node:fs');
        const at = (name) => require('node:path').join(__dirname, name);
        writeFileSync(at('dist/electron'), ${JSON.stringify(`#!${process.execPath}\nconsole.log('${SHOWN}')`)});
        chmodSync(at('dist/electron'), 0o755);
        writeFileSync(at('path.txt'), 'electron');`;
      const { desktop, out } = await open(projectWith(folder, null, install));
      expect(desktop).toHaveProperty('ended');
      expect(out).toMatch(/^Fetching .* once .*--browser/);
    });
  });

  it('is not to be had where it cannot be fetched, nor where Electron is not installed', async () => {
    await inFolder(async (folder) => {
      const { desktop } = await open(projectWith(folder, null));
      expect(desktop).toEqual({
        failed: expect.stringMatching(/^its runtime could not be fetched/) as string,
      });
    });
    await inFolder(async (folder) => {
      expect((await open(folder)).desktop).toEqual({ failed: 'Electron is not installed' });
    });
  });

  it('is not to be had without a screen', async () => {
    if (process.platform === 'darwin') return;
    vi.stubEnv('DISPLAY', '');
    vi.stubEnv('WAYLAND_DISPLAY', '');
    const { io } = keepingIo();
    expect(await openDesktop('.', FIRING, io)).toEqual({ failed: 'this machine shows no screen' });
  });
});

describe('the person’s browser', () => {
  const address = 'http://127.0.0.1:1/t/';
  it.each([
    ['win32', {}, ['rundll32', 'url.dll,FileProtocolHandler', address]],
    ['darwin', {}, ['open', address]],
    ['linux', { DISPLAY: ':0' }, ['xdg-open', address]],
    ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, ['xdg-open', address]],
    ['linux', {}, null],
  ] as const)('is opened on %s with %j by its own means', (platform, env, opener) => {
    expect(openerFor(address, { platform, env })).toEqual(opener);
  });
});
