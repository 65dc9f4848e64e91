import { existsSync, mkdirSync, statSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder, whyNotWritten } from '../../cli/make-folder.ts';
import { inFolder, written } from './terminal.ts';

describe('making a folder', () => {
  it('makes those on the way, and leaves one that is there', async () => {
    await inFolder(async (folder) => {
      const deep = join(folder, 'a', 'b', 'c');
      expect([await makeFolder(deep), await makeFolder(deep)]).toEqual([null, null]);
      expect(statSync(deep).isDirectory()).toBe(true);
    });
  });

  it('is not disturbed by another that makes the same one', async () => {
    await inFolder(async (folder) => {
      const deep = join(folder, 'a', 'b', 'c');
      const all = await Promise.all(Array.from({ length: 8 }, () => makeFolder(deep)));
      expect(all).toEqual(Array(8).fill(null));
    });
  });

  it('names the file that stands in the way, at any level', async () => {
    await inFolder(async (folder) => {
      const file = written(folder, 'letter', '');
      const why = `${file} is a file, not a folder`;
      expect(await makeFolder(file)).toBe(why);
      expect(await makeFolder(join(file, 'x', 'y'))).toBe(why);
    });
  });

  it.skipIf(process.platform === 'win32')(
    'goes through links, and not through broken ones',
    async () => {
      await inFolder(async (folder) => {
        mkdirSync(join(folder, 'real'));
        symlinkSync(join(folder, 'real'), join(folder, 'link'));
        expect(await makeFolder(join(folder, 'link', 'new'))).toBeNull();
        expect(existsSync(join(folder, 'real', 'new'))).toBe(true);
        symlinkSync(join(folder, 'gone'), join(folder, 'broken'));
        expect(await makeFolder(join(folder, 'broken'))).toBe('a link to nothing stands there');
      });
    },
  );
});

describe('why something was not written', () => {
  const failure = (code: string): Error => Object.assign(new Error(code), { code });

  it.each([
    ['ENOSPC', 'there is no space left on the disk'],
    ['EACCES', 'you may not write there'],
    ['EPERM', 'you may not write there'],
    ['EROFS', 'what is there can only be read'],
  ])('%s is told in plain words', (code, words) => {
    expect(whyNotWritten(failure(code))).toBe(words);
  });

  it('keeps the system’s own word where there is no plainer one', () => {
    expect(whyNotWritten(failure('EXDEV'))).toBe('the system could not write there (EXDEV)');
    expect(whyNotWritten(new Error('?'))).toContain('unknown reason');
  });
});
