import { cpSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectFolder, startPage } from '../../cli/start-page.ts';
import { inFolder, keepingIo, plainLog, sample, WORKERS, written } from './terminal.ts';

/** A project folder with the bundled sample and nothing else. */
const project = (folder: string): string => {
  const samples = join(folder, 'sample-traces');
  mkdirSync(samples);
  for (const name of ['underfired-glaze.txt', 'underfired-glaze.schedule.json']) {
    cpSync(sample(name), join(samples, name));
  }
  return folder;
};

describe('npm start', () => {
  it('shows the bundled sample and where its report is', async () => {
    await inFolder(async (folder) => {
      const { io, kept } = keepingIo();
      const status = await startPage([], io, WORKERS, project(folder), folder);
      expect([status, kept.error]).toEqual([0, '']);
      expect(kept.out).toContain('from a studio that does not exist');
      expect(kept.out).toContain('Afterfire: underfired-glaze.txt');
      expect(kept.out.trimEnd()).toMatch(/reports\/underfired-glaze\.html$/);
      expect(existsSync(join(folder, 'reports', 'underfired-glaze.html'))).toBe(true);
    });
  });

  it('takes a log from where the person stands', async () => {
    await inFolder(async (folder) => {
      written(folder, 'mine.csv', plainLog());
      const { io, kept } = keepingIo();
      const args = ['mine.csv', '--cone', '06'];
      expect(await startPage(args, io, WORKERS, project(folder), folder)).toBe(0);
      expect(kept.out).toMatch(/^Afterfire: mine\.csv\n/);
      expect(readdirSync(join(folder, 'reports'))).toEqual(['mine.html']);
    });
  });

  it('stops at a log that cannot be read', async () => {
    await inFolder(async (folder) => {
      const { io, kept } = keepingIo();
      expect(await startPage(['none.csv'], io, WORKERS, folder, folder)).toBe(1);
      expect(kept.out).toBe('');
      expect(kept.error).toMatch(/none\.csv: there is no such file\n$/);
    });
  });

  it('finds the project from its built and its written code', () => {
    const root = dirname(dirname(sample('README.md')));
    expect(projectFolder(join(root, 'dist', 'cli'))).toBe(root);
    expect(projectFolder(join(root, 'cli'))).toBe(root);
    expect(projectFolder('/')).toBe('/');
  });
});
