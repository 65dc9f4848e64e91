import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder, plainLog, run, written } from './terminal.ts';

describe('--out', () => {
  it('writes a file for each log and says where', async () => {
    await inFolder(async (folder) => {
      const logs = ['a.csv', 'b.csv'].map((name) => written(folder, name, plainLog()));
      const out = join(folder, 'reports', 'new');
      const ran = await run('analyze', ...logs, '--format', 'html', '--out', out);
      expect([ran.status, ran.error]).toEqual([0, '']);
      expect(
        ran.out
          .trim()
          .split('\n')
          .map((line) => line.split('/').at(-1)),
      ).toEqual(['a.html', 'b.html']);
      expect(readdirSync(out).sort()).toEqual(['a.html', 'b.html']);
      expect(readFileSync(join(out, 'a.html'), 'utf8')).toMatch(/^<!doctype html>/);
    });
  });

  it('never writes over an input', async () => {
    await inFolder(async (folder) => {
      const rows = JSON.stringify(
        Array.from({ length: 60 }, (_, i) => ({ seconds: i * 60, celsius: 20 + i * 4 })),
      );
      const log = written(folder, 'firing.json', rows);
      const ran = await run('analyze', log, '--format', 'json', '--out', folder);
      expect(ran.status).toBe(0);
      expect(ran.out).toBe('');
      expect(readFileSync(log, 'utf8')).toBe(rows);
      expect(existsSync(join(folder, 'firing-2.json'))).toBe(true);
    });
  });

  it('keeps two logs of one name apart', async () => {
    await inFolder(async (folder) => {
      const logs = ['x', 'y'].map((sub) => {
        mkdirSync(join(folder, sub));
        return written(join(folder, sub), 'log.csv', plainLog());
      });
      await run('analyze', ...logs, '--out', folder);
      expect(readdirSync(folder).sort()).toEqual(['log-2.txt', 'log.txt', 'x', 'y']);
    });
  });

  it('writes over what it wrote itself, and over nothing else', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      const letter = written(folder, 'other.txt', 'a letter');
      const other = written(folder, 'other.csv', plainLog());
      for (const format of ['text', 'json', 'html']) {
        for (const _ of [1, 2]) {
          await run('analyze', log, other, '--format', format, '--out', folder);
        }
      }
      expect(readFileSync(letter, 'utf8')).toBe('a letter');
      expect(readdirSync(folder).sort()).toEqual([
        ...['log.csv', 'log.html', 'log.json', 'log.txt'],
        ...['other-2.txt', 'other.csv', 'other.html', 'other.json', 'other.txt'],
      ]);
    });
  });

  it('says that a file is not a folder, once, before any work', async () => {
    await inFolder(async (folder) => {
      const logs = ['a.csv', 'b.csv'].map((name) => written(folder, name, plainLog()));
      const file = written(folder, 'afile', 'a letter');
      for (const out of [file, join(file, 'deeper', 'still')]) {
        const ran = await run('analyze', ...logs, '--out', out);
        expect(ran).toEqual({
          status: 1,
          out: '',
          error: `cannot use --out ${out}: ${file} is a file, not a folder\n`,
        });
      }
      expect(readFileSync(file, 'utf8')).toBe('a letter');
      const asJson = await run('analyze', ...logs, '--out', file, '--format', 'json');
      const lines = asJson.out.trim().split('\n');
      expect(lines.map((line) => JSON.parse(line) as unknown)).toMatchObject([
        { fileName: 'a.csv', error: { code: 'cannot-write' } },
        { fileName: 'b.csv', error: { code: 'cannot-write' } },
      ]);
    });
  });

  it('leaves a folder alone that has the name of an answer', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      mkdirSync(join(folder, 'log.txt'));
      const { status, out } = await run('analyze', log, '--out', folder);
      expect(status).toBe(0);
      expect(out.trim().endsWith('log-2.txt')).toBe(true);
    });
  });

  it.runIf(existsSync('/proc'))('ends where the system makes no folders', async () => {
    await inFolder(async (folder) => {
      const log = written(folder, 'log.csv', plainLog());
      const { status, out, error } = await run('analyze', log, '--out', '/proc/x/y');
      expect([status, out]).toEqual([1, '']);
      expect(error).toBe('cannot use --out /proc/x/y: the system takes no files there\n');
      // The folder is there, and takes no file.
      const inside = await run('analyze', log, '--out', '/proc');
      expect(inside.status).toBe(1);
      expect(inside.error).toMatch(/^\S+log\.txt could not be written: [a-z ]+\n$/);
    });
  });
});
