import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { whyNotWritten } from '../../../electron/host/not-written.ts';
import { writeWhole } from '../../../electron/host/write-whole.ts';
import { inFolder, written } from '../../cli/terminal.ts';

/** Why a file cannot be written; null where it can. */
const why = (path: string): Promise<string | null> =>
  writeWhole(path, 'new').then(() => null, whyNotWritten);

const modeOf = (path: string): number => statSync(path).mode & 0o777;
const onPosix = it.skipIf(process.platform === 'win32');

describe('a written file', () => {
  it('is whole, and leaves nothing else behind', async () => {
    await inFolder(async (folder) => {
      const path = join(folder, 'new', 'report.html');
      await writeWhole(path, 'first');
      await writeWhole(path, 'second');
      expect(readFileSync(path, 'utf8')).toBe('second');
      expect(readdirSync(join(folder, 'new'))).toEqual(['report.html']);
    });
  });

  it('never takes the place of a folder', async () => {
    await inFolder(async (folder) => {
      const taken = join(folder, 'taken');
      mkdirSync(taken);
      writeFileSync(join(taken, 'inside'), 'kept');
      expect(await why(taken)).toBe('a folder stands there');
      expect(readdirSync(folder)).toEqual(['taken']);
      expect(readFileSync(join(taken, 'inside'), 'utf8')).toBe('kept');
    });
  });

  onPosix('has the permissions of the one before it', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, 'report.html', 'old');
      for (const mode of [0o600, 0o664, 0o755]) {
        chmodSync(path, mode);
        expect(await why(path)).toBeNull();
        expect(modeOf(path)).toBe(mode);
      }
    });
  });

  it('does not take the place of one that is write-protected', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, 'report.html', 'old');
      chmodSync(path, 0o444);
      expect(await why(path)).toBe('the file that stands there is write-protected');
      expect(readFileSync(path, 'utf8')).toBe('old');
      expect(readdirSync(folder)).toEqual(['report.html']);
      chmodSync(path, 0o644);
    });
  });

  onPosix('is written through a link, which stays one', async () => {
    await inFolder(async (folder) => {
      mkdirSync(join(folder, 'far'));
      const end = written(folder, 'far/report.html', 'old');
      chmodSync(end, 0o640);
      const link = join(folder, 'link.html');
      symlinkSync(join('far', 'report.html'), link);
      expect(await why(link)).toBeNull();
      expect(lstatSync(link).isSymbolicLink()).toBe(true);
      expect([readFileSync(end, 'utf8'), modeOf(end)]).toEqual(['new', 0o640]);
      expect(readdirSync(join(folder, 'far'))).toEqual(['report.html']);
    });
  });

  onPosix('does not take the place of a link that leads nowhere', async () => {
    await inFolder(async (folder) => {
      symlinkSync(join(folder, 'gone'), join(folder, 'link.html'));
      expect(await why(join(folder, 'link.html'))).toBe('a link to nothing stands there');
      expect(readdirSync(folder)).toEqual(['link.html']);
    });
  });

  // A pipe stands for all that is neither file nor folder: a device is told by the same question.
  onPosix('does not take the place of a pipe or a device', async () => {
    await inFolder(async (folder) => {
      const pipe = join(folder, 'pipe');
      execFileSync('mkfifo', [pipe]);
      symlinkSync(pipe, join(folder, 'link'));
      for (const path of [pipe, join(folder, 'link')]) {
        expect(await why(path)).toBe('what stands there is no file');
      }
      expect(lstatSync(pipe).isFIFO()).toBe(true);
      expect(readdirSync(folder).sort()).toEqual(['link', 'pipe']);
    });
  });
});
