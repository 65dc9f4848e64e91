import { execFileSync } from 'node:child_process';
import { truncateSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MAX_FILE_BYTES } from '../../../core/log/limits.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import { readLogFile, readScheduleFile } from '../../../electron/host/files.ts';
import { systemCode } from '../../../electron/host/system-code.ts';
import { inFolder, written } from '../../cli/terminal.ts';

const refusalOf = async (promise: Promise<unknown>): Promise<Refusal> => {
  try {
    await promise;
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
  throw new Error('nothing was refused');
};

describe('a log on the disk', () => {
  it('comes as the bytes it is', async () => {
    await inFolder(async (folder) => {
      const bytes = Uint8Array.from([0, 255, 10, 13, 128]);
      const path = written(folder, 'log', bytes);
      expect(new Uint8Array(await readLogFile(path))).toEqual(bytes);
    });
  });

  it('that is missing or a folder is refused in plain words', async () => {
    await inFolder(async (folder) => {
      const missing = await refusalOf(readLogFile(join(folder, 'none.csv')));
      expect([missing.code, missing.message]).toEqual(['file-missing', 'there is no such file']);
      const dir = await refusalOf(readLogFile(folder));
      expect([dir.code, dir.message]).toEqual(['file-unreadable', 'this is a folder, not a file']);
      const through = await refusalOf(readLogFile(join(written(folder, 'a', ''), 'b')));
      expect(through.code).toBe('file-missing');
    });
  });

  it('that is too large is refused before it is read', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, 'huge.csv', '');
      truncateSync(path, MAX_FILE_BYTES + 1);
      const refusal = await refusalOf(readLogFile(path));
      expect(refusal.code).toBe('too-large');
      expect(refusal.message).toBe('the file is larger than 512 MB');
    });
  });

  it.skipIf(process.platform === 'win32')('may come through a pipe', async () => {
    await inFolder(async (folder) => {
      const pipe = join(folder, 'pipe');
      execFileSync('mkfifo', [pipe]);
      const text = 'time,kiln\n'.repeat(200_000);
      const [read] = await Promise.all([
        readLogFile(pipe),
        import('node:fs/promises').then(({ writeFile }) => writeFile(pipe, text)),
      ]);
      expect(Buffer.from(read).toString()).toBe(text);
    });
  });
});

describe('a schedule on the disk', () => {
  const asRead = async (bytes: Uint8Array): Promise<string> => {
    let text = '';
    await inFolder(async (folder) => {
      text = await readScheduleFile(written(folder, 'plan.csv', bytes));
    });
    return text;
  };

  it('is text in the encodings that editors write', async () => {
    expect(await asRead(Buffer.from('# Brennkurve für 6'))).toBe('# Brennkurve für 6');
    expect(await asRead(Buffer.from('\ufeffa ü', 'utf16le'))).toBe('a ü');
    expect(await asRead(Buffer.from('# f\xfcr', 'latin1'))).toBe('# für');
  });

  it('is refused where it is far too large', async () => {
    await inFolder(async (folder) => {
      const path = written(folder, 'plan.csv', 'x'.repeat(1024 * 1024 + 1));
      expect((await refusalOf(readScheduleFile(path))).code).toBe('too-large');
    });
  });
});

describe('a fault', () => {
  it('that is not the system’s has no system code', () => {
    expect(systemCode(new Error('other'))).toBeNull();
    expect(systemCode('text')).toBeNull();
  });
});
