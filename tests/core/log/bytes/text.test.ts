import { expect, test } from 'vitest';
import { afterLineEnd, lineEndFrom, makeText } from '../../../../core/log/bytes/text.ts';
import { utf8 } from '../helpers.ts';

const linesOf = (text: string): string[] => {
  const bytes = utf8(text);
  const lines: string[] = [];
  for (let at = 0; at < bytes.length;) {
    const end = lineEndFrom(bytes, at);
    lines.push(new TextDecoder().decode(bytes.subarray(at, end)));
    at = afterLineEnd(bytes, end);
  }
  return lines;
};

test('lines end in LF, CR LF or CR, also mixed, and at the end of the text', () => {
  expect(linesOf('a\nb\r\nc\rd')).toEqual(['a', 'b', 'c', 'd']);
  expect(linesOf('a\n\n\r\n\rb\n')).toEqual(['a', '', '', '', 'b']);
  expect(linesOf('')).toEqual([]);
});

test('windows-1252 is decoded as such by every runtime', () => {
  // Bytes and characters from the WHATWG Encoding Standard, index-windows-1252.
  const text = makeText(Uint8Array.of(0x80, 0x9b, 0xb0, 0xe9), 'windows-1252', 'windows-1252');
  expect(text.decode(0, 4)).toBe('€›°é');
  expect(text.decode(2, 3)).toBe('°');
});
