import fc from 'fast-check';
import { expect, test } from 'vitest';
import { takeUtf8Census } from '../../../../core/log/bytes/utf8.ts';
import { utf8 } from '../helpers.ts';

test('counts what the platform encodes as sound', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
      const beyondAscii = [...text].filter((letter) => letter > '\u007f').length;
      expect(takeUtf8Census(utf8(text))).toEqual({ sequences: beyondAscii, broken: 0 });
    }),
  );
});

test('agrees with the strict decoder on what is broken', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 12 }), (bytes) => {
      let isSound = true;
      try {
        new TextDecoder('utf-8', { fatal: true }).decode(bytes);
      } catch {
        isSound = false;
      }
      expect(takeUtf8Census(bytes).broken === 0).toBe(isSound);
    }),
    { numRuns: 2000 },
  );
});

test('the degree sign of Latin-1 is broken UTF-8', () => {
  expect(takeUtf8Census(Uint8Array.of(0x54, 0xb0, 0x43))).toEqual({ sequences: 0, broken: 1 });
});
