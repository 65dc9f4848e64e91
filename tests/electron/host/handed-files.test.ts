import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { zFileContent, zHandedFile } from '../../../electron/host/contract.ts';
import { handedFiles } from '../../../electron/host/handed-files.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'handed-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const named = (name: string, text?: string) => {
  const path = join(folder, name);
  if (text !== undefined) writeFileSync(path, text);
  return { path, role: 'log' as const };
};

test('files are handed over by name and ticket, without their paths', () => {
  const handed = handedFiles().hand([named('a.csv', 'a'), named('b.csv', 'b')]);
  expect(handed.map(({ fileName }) => fileName)).toEqual(['a.csv', 'b.csv']);
  for (const file of handed) expect(zHandedFile.parse(file)).toEqual(file);
  expect(JSON.stringify(handed)).not.toContain(folder);
  expect(handed[0]?.ticket).not.toBe(handed[1]?.ticket);
});

test('a ticket gives the bytes, as often as it is shown, in memory of their own', async () => {
  const files = handedFiles();
  const [file] = files.hand([named('c.csv', 'time,°C\n')]);
  for (let time = 0; time < 2; time += 1) {
    const content = zFileContent.parse(await files.read({ ticket: file?.ticket ?? '' }));
    if (!('bytes' in content)) throw new Error(content.refused);
    expect(new TextDecoder().decode(content.bytes)).toBe('time,°C\n');
    expect(content.bytes.buffer.byteLength).toBe(content.bytes.byteLength);
  }
});

test('a ticket of another session, or none, gives nothing', async () => {
  const [file] = handedFiles().hand([named('d.csv', 'd')]);
  const refused = { refused: 'this file was not opened in this session' };
  expect(await handedFiles().read({ ticket: file?.ticket ?? '' })).toEqual(refused);
});

test.each([
  ['is not there', () => named('gone.csv'), 'there is no such file'],
  ['is a folder', () => ({ path: folder, role: 'log' as const }), 'this is a folder, not a file'],
])('a file that %s is refused in one sentence', async (_what, file, refused) => {
  const files = handedFiles();
  const [handed] = files.hand([file()]);
  expect(await files.read({ ticket: handed?.ticket ?? '' })).toEqual({ refused });
});
