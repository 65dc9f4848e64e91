import { existsSync, mkdirSync, statSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder } from '../../../electron/host/make-folder.ts';
import { whyNotWritten } from '../../../electron/host/not-written.ts';
import { keptPreferences } from '../../../electron/host/preferences.ts';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { writeWhole } from '../../../electron/host/write-whole.ts';
import { inFolder, written } from '../../cli/terminal.ts';

/** Why a folder cannot be made; null where it can. */
const why = (path: string): string | null => {
  try {
    makeFolder(path);
    return null;
  } catch (cause) {
    return whyNotWritten(cause);
  }
};

describe('making a folder', () => {
  it('makes those on the way, and leaves one that is there', async () => {
    await inFolder((folder) => {
      const deep = join(folder, 'a', 'b', 'c');
      expect([why(deep), why(deep)]).toEqual([null, null]);
      expect(statSync(deep).isDirectory()).toBe(true);
    });
  });

  it('names the file that stands in the way, at any level', async () => {
    await inFolder((folder) => {
      const file = written(folder, 'letter', '');
      const inTheWay = `${file} is a file, not a folder`;
      expect(why(file)).toBe(inTheWay);
      expect(why(join(file, 'x', 'y'))).toBe(inTheWay);
    });
  });

  it.skipIf(process.platform === 'win32')('goes through links, and not through broken ones', () =>
    inFolder((folder) => {
      mkdirSync(join(folder, 'real'));
      symlinkSync(join(folder, 'real'), join(folder, 'link'));
      expect(why(join(folder, 'link', 'new'))).toBeNull();
      expect(existsSync(join(folder, 'real', 'new'))).toBe(true);
      symlinkSync(join(folder, 'gone'), join(folder, 'broken'));
      expect(why(join(folder, 'broken'))).toBe('a link to nothing stands there');
    }),
  );

  it.skipIf(process.platform !== 'linux')(
    'comes back from where no folder can be made, and so does all that writes there',
    async () => {
      const nowhere = '/proc/none/at/all';
      expect(why(nowhere)).toBe('the system takes no files there');
      await expect(writeWhole(join(nowhere, 'report.html'), '')).rejects.toThrow('ENOENT');
      keptPreferences.keep(nowhere, DEFAULT_PREFERENCES);
      expect(keptPreferences.read(nowhere)).toBeNull();
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
