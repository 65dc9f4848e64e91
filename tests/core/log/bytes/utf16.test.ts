import fc from 'fast-check';
import { expect, test } from 'vitest';
import { utf16ToUtf8 } from '../../../../core/log/bytes/utf16.ts';
import { utf8 } from '../helpers.ts';

const units = (text: string, order: 'little' | 'big'): Uint8Array =>
  Uint8Array.from(
    [...Array(text.length).keys()].flatMap((i) => {
      const unit = text.charCodeAt(i);
      return order === 'little' ? [unit & 0xff, unit >> 8] : [unit >> 8, unit & 0xff];
    }),
  );

test('gives the UTF-8 of the same text, whichever byte comes first', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
      // TextEncoder, too, writes U+FFFD for half a pair of surrogates.
      expect(utf16ToUtf8(units(text, 'little'), 'little', 0)).toEqual(utf8(text));
      expect(utf16ToUtf8(units(text, 'big'), 'big', 0)).toEqual(utf8(text));
    }),
    { numRuns: 1000 },
  );
});

test('drops half a unit at the end, and begins where it is told', () => {
  const bytes = Uint8Array.of(0xff, 0xfe, 0x41, 0x00, 0x42);
  expect(utf16ToUtf8(bytes, 'little', 2)).toEqual(utf8('A'));
});
