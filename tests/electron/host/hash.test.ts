import { expect, it } from 'vitest';
import { sha256 } from '../../../electron/host/hash.ts';

// FIPS 180-4's example messages: one block ("abc") and, as NIST publishes it, the empty message.
it.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('the hash of %j is the standard’s', (text, hash) => {
  expect(sha256(new TextEncoder().encode(text))).toBe(hash);
});
