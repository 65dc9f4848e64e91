import { expect, it } from 'vitest';
import { guessEncoding } from '../../../electron/host/encoding.ts';

it('German text in one byte a letter is guessed as an encoding that reads it right', () => {
  const text =
    'Datum;Uhrzeit;Temperatur °C;Bemerkung für die Brennkurve: gleichmäßig, größer, schön\n';
  const label = guessEncoding(Buffer.from(text.repeat(5), 'latin1'));
  expect(label).not.toBeNull();
  expect(new TextDecoder(label!).decode(Buffer.from(text, 'latin1'))).toBe(text);
});

it('a guess is a label that TextDecoder knows, or none', () => {
  const bytes = Uint8Array.from({ length: 300 }, (_, i) => 128 + (i % 128));
  const label = guessEncoding(bytes);
  if (label !== null) expect(() => new TextDecoder(label)).not.toThrow();
  expect(guessEncoding(new TextEncoder().encode('plain'))).not.toBeNull();
});
