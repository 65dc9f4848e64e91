import { expect, test } from 'vitest';
import { foreignFormat } from '../../../../core/log/bytes/signatures.ts';
import { utf8 } from '../helpers.ts';

test.each([
  // First bytes as the formats' specifications print them.
  ['picture (PNG)', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]], // RFC 2083, 3.1
  ['picture (JPEG)', [0xff, 0xd8, 0xff, 0xe0]], // ITU-T T.81, B.1.1.3
  ['gzip', [0x1f, 0x8b, 8, 0]], // RFC 1952, 2.3.1
  ['zip', [0x50, 0x4b, 3, 4]], // APPNOTE.TXT, 4.3.7
  ['PDF', [0x25, 0x50, 0x44, 0x46, 0x2d]], // ISO 32000-1, 7.5.2
  ['old workbook', [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]], // MS-CFB, 2.2
])('%s', (kind, bytes) => {
  expect(foreignFormat(Uint8Array.from(bytes))?.kind).toContain(kind);
});

test('text is none of them, whatever letters it begins with', () => {
  for (const text of ['Time,Temp', 'PKZ,1', 'MM/DD/YYYY,C', 'GIF', 'Rar', '%PD']) {
    expect(foreignFormat(utf8(text))).toBeNull();
  }
  expect(foreignFormat(new Uint8Array())).toBeNull();
});
