import { describe, expect, it } from 'vitest';
import { lineOfFile } from '../../../renderer/sheet/line-of-file.ts';
import { REFUSAL_ADVICE } from '../../../renderer/sheet/refusal-advice.ts';

const utf16 = (text: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array([0xff, 0xfe, ...[...text].flatMap((letter) => [letter.charCodeAt(0), 0])]);

describe('the line to blame', () => {
  it('is shown as it stands in the file, whatever ends the lines', async () => {
    expect(await lineOfFile(new Blob(['a\nb;1\nc\n']), 2)).toBe('b;1');
    expect(await lineOfFile(new Blob(['a\r\nb;1\r\nc']), 2)).toBe('b;1');
    expect(await lineOfFile(new Blob([utf16('a\nb;1\n')]), 2)).toBe('b;1');
  });

  it('is cut where it is endless, and not shown where there is none', async () => {
    expect(await lineOfFile(new Blob(['x'.repeat(5000)]), 1)).toHaveLength(300);
    expect(await lineOfFile(new Blob(['a\nb']), 9)).toBeNull();
  });
});

describe('what to try', () => {
  it('is said for every reason that a log can be refused for', () => {
    for (const advice of Object.values(REFUSAL_ADVICE)) {
      expect(advice.length).toBeGreaterThan(0);
      for (const said of advice) expect(said).toMatch(/^[A-Z].*\.$/);
    }
  });
});
