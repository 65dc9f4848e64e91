import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { DesktopEnd } from '../../cli/open-desktop.ts';
import { projectFolder, startApp, type Doors } from '../../cli/start-app.ts';
import type { FiringFiles } from '../../electron/host/firing-arguments.ts';
import { inFolder, keepingIo, plainLog, sample, WORKERS, written } from './terminal.ts';

/** A built project with the bundled sample and nothing else. */
const projectIn = (folder: string): string => {
  const project = join(folder, 'project');
  mkdirSync(join(project, 'sample-traces'), { recursive: true });
  for (const name of ['underfired-glaze.txt', 'underfired-glaze.schedule.json']) {
    cpSync(sample(name), join(project, 'sample-traces', name));
  }
  mkdirSync(join(project, 'dist/renderer'), { recursive: true });
  writeFileSync(join(project, 'dist/renderer/index.html'), '<head></head>the page');
  return project;
};

interface Start {
  readonly folder: string;
  /** Why there is no desktop window; none: there is one. */
  readonly noDesktop?: string;
  readonly noBrowser?: boolean;
  /** How the desktop window ends; none: it is closed. */
  readonly desktopEnd?: DesktopEnd;
  /** What the person does with the page once its address is known. */
  readonly visit?: (address: string) => Promise<void>;
}

const start = async (
  args: readonly string[],
  { folder, noDesktop, noBrowser, desktopEnd = 'closed', visit }: Start,
) => {
  const { io, kept } = keepingIo();
  const desktop: FiringFiles[] = [];
  let end = (): void => undefined;
  const doors: Doors = {
    openDesktop: (_project, files) => {
      desktop.push(files);
      return Promise.resolve(
        noDesktop === undefined ? { ended: Promise.resolve(desktopEnd) } : { failed: noDesktop },
      );
    },
    openInBrowser: async (address) => {
      await visit?.(address);
      setTimeout(() => {
        end();
      });
      return noBrowser !== true;
    },
    onServing: (close) => (end = close),
  };
  const places = { project: projectIn(folder), where: folder, settings: join(folder, 'settings') };
  const status = await startApp(args, io, WORKERS, places, doors);
  return { status, ...kept, desktop, project: places.project };
};

describe('npm start', () => {
  it('says the verdict on the bundled sample, and opens the desktop window on it', async () => {
    await inFolder(async (folder) => {
      const { status, out, error, desktop, project } = await start([], { folder });
      expect([status, error]).toEqual([0, '']);
      expect(out).toContain('from a studio that does not exist');
      expect(out).toContain('Afterfire: underfired-glaze.txt');
      expect(out).not.toContain('http');
      const sampleIn = (name: string) => join(project, 'sample-traces', name);
      expect(desktop).toEqual([
        {
          logs: [sampleIn('underfired-glaze.txt')],
          schedule: sampleIn('underfired-glaze.schedule.json'),
        },
      ]);
    });
  });

  it('says so, and fails, where the window ended with a fault', async () => {
    await inFolder(async (folder) => {
      const { status, error } = await start([], { folder, desktopEnd: { broke: 'SIGSEGV' } });
      expect(status).toBe(1);
      expect(error).toBe(
        '\nThe desktop window ended with a fault (SIGSEGV). Your files are untouched.\n',
      );
    });
  });

  it('takes a log from where the person stands', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'mine.csv', plainLog());
      const { out, desktop } = await start(['mine.csv'], { folder });
      expect(out).toMatch(/^Afterfire: mine\.csv\n/);
      expect(desktop).toEqual([{ logs: [log], schedule: null }]);
    });
  });

  it('serves the same to a browser where there is no desktop window, and says why', async () => {
    await inFolder(async (folder) => {
      let page = '';
      const { status, out, error } = await start([], {
        folder,
        noDesktop: 'this machine shows no screen',
        visit: async (address) => {
          page = await (await fetch(address)).text();
        },
      });
      expect(status).toBe(0);
      expect(error).toMatch(/^\nNo desktop window here: this machine shows no screen\..*\n$/);
      expect(page).toContain('the page');
      expect(out).toMatch(/open in your browser, at http:\/\/127\.0\.0\.1:\d+\/[\w-]{43}\/\n/);
    });
  });

  it('prints the address alone where no browser can be opened either', async () => {
    await inFolder(async (folder) => {
      const { out } = await start(['--browser'], { folder, noBrowser: true });
      expect(out).toMatch(
        /Open this address in a browser.*\nhttp:\/\/127\.0\.0\.1:\d+\/[\w-]{43}\/\n/,
      );
    });
  });

  it('tries no desktop window where the browser is wanted', async () => {
    await inFolder(async (folder) => {
      const { desktop, error } = await start(['--browser'], { folder });
      expect([desktop, error]).toEqual([[], '']);
    });
  });

  it('opens nothing for a file that is not there', async () => {
    await inFolder(async (folder) => {
      const { status, out, error, desktop } = await start(['none.csv'], { folder });
      expect([status, out, desktop]).toEqual([1, '', []]);
      expect(error).toMatch(/none\.csv: there is no such file\n$/);
    });
  });

  it('opens the window on a log that it cannot read, which says what to do', async () => {
    await inFolder(async (folder) => {
      written(folder, 'empty.csv', '');
      const { status, error, desktop } = await start(['empty.csv'], { folder });
      expect([status, desktop.length]).toEqual([0, 1]);
      expect(error).toContain('empty.csv');
    });
  });

  it('says what was wrong with the command', async () => {
    await inFolder(async (folder) => {
      const { status, error, desktop } = await start(['--cone', '6'], { folder });
      expect([status, desktop]).toEqual([2, []]);
      expect(error).toContain("Unknown option '--cone'");
    });
  });

  it('finds the project from its built and its written code', () => {
    const root = dirname(dirname(sample('README.md')));
    expect(projectFolder(join(root, 'dist', 'cli'))).toBe(root);
    expect(projectFolder(join(root, 'cli'))).toBe(root);
    expect(projectFolder('/')).toBe('/');
  });
});
