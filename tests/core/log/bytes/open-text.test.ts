import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { openText } from '../../../../core/log/bytes/open-text.ts';
import { decided, utf8 } from '../helpers.ts';

const opened = (bytes: Uint8Array, guess?: () => string | null) => {
  const account = new Account();
  const text = openText(bytes, guess, account);
  return { text: text.decode(0, text.bytes.length), encoding: text.encoding, account };
};

const utf16 = (text: string, isBig: boolean, hasMark: boolean): Uint8Array =>
  Uint8Array.from(
    [...(hasMark ? '\ufeff' : ''), ...text].flatMap((letter) => {
      const unit = letter.charCodeAt(0);
      return isBig ? [unit >> 8, unit & 0xff] : [unit & 0xff, unit >> 8];
    }),
  );

describe('the encoding', () => {
  test('UTF-8, with and without a byte order mark', () => {
    expect(opened(utf8('Temp °C')).text).toBe('Temp °C');
    const marked = opened(utf8('\ufeffTemp °C'));
    expect(marked.text).toBe('Temp °C');
    expect(decided(marked.account, 'encoding')).toEqual(['utf-8', 'byte-order-mark']);
  });

  test('UTF-16 either way, by its mark or by its zeros', () => {
    for (const isBig of [false, true]) {
      for (const hasMark of [false, true]) {
        const { text, encoding, account } = opened(utf16('Zeit;°C\n1;20', isBig, hasMark));
        expect(text).toBe('Zeit;°C\n1;20');
        expect(encoding).toBe(isBig ? 'utf-16be' : 'utf-16le');
        expect(decided(account, 'encoding')?.[1]).toBe(hasMark ? 'byte-order-mark' : 'zero-bytes');
      }
    }
  });

  test('a western page where bytes are no UTF-8', () => {
    const { text, encoding } = opened(Uint8Array.of(0x54, 0x20, 0xb0, 0x43));
    expect([text, encoding]).toEqual(['T °C', 'windows-1252']);
  });

  test('a guess from outside, if it is usable', () => {
    const bytes = Uint8Array.of(0xc2, 0xf0, 0xe5, 0xec, 0xff, 0x2c, 0x31);
    expect(opened(bytes, () => 'windows-1251').text).toBe('Время,1');
    expect(opened(bytes, () => 'no-such-page').encoding).toBe('windows-1252');
    expect(opened(bytes, () => 'UTF-16BE').encoding).toBe('windows-1252');
  });

  test('UTF-8 with a few damaged bytes stays UTF-8, with a warning', () => {
    const { encoding, account } = opened(Uint8Array.of(...utf8('°°°°°°'), 0xff));
    expect(encoding).toBe('utf-8');
    expect(account.warnings()).toEqual(['damaged-characters']);
  });
});

describe('the end of the file', () => {
  test('loses its NULs and the old end-of-file sign', () => {
    const { text, account } = opened(Uint8Array.of(...utf8('1,20\n'), 0, 0, 0));
    expect(text).toBe('1,20\n');
    expect(account.warnings()).toEqual(['nul-bytes']);
    expect(opened(Uint8Array.of(...utf8('1,20\n'), 0x1a)).text).toBe('1,20\n');
  });
});

describe('what is no text', () => {
  test('is refused for its control characters or its scattered NULs', () => {
    const controls = Uint8Array.from({ length: 500 }, (_, i) => (i % 9 === 0 ? 3 : 65));
    const riddled = Uint8Array.from({ length: 500 }, (_, i) => (i % 5 === 0 ? 0 : 65));
    for (const bytes of [controls, riddled]) {
      expect(() => opened(bytes)).toThrow(expect.objectContaining({ code: 'binary' }));
    }
  });

  test('but a block of NULs among lines is no reason', () => {
    const bytes = Uint8Array.of(...utf8('1,20\n2,21\n'), ...new Uint8Array(400), ...utf8('3,22\n'));
    expect(opened(bytes).text).toContain('3,22');
  });
});

describe('an encoding that the person names', () => {
  const given = (bytes: Uint8Array, label: string) => {
    const account = new Account();
    const text = openText(bytes, undefined, account, label);
    return { text, said: decided(account, 'encoding'), warnings: account.warnings() };
  };

  test('is taken, by any of its labels', () => {
    const { text, said } = given(Uint8Array.of(0x54, 0xe1, 0x2c, 0x31), 'koi8-r');
    expect(text.decode(0, 4)).toBe('TА,1');
    expect(said).toEqual(['koi8-r', 'given']);
    expect(given(Uint8Array.of(0x31, 0xb0), 'latin1').text.decode(0, 2)).toBe('1°');
    expect(given(Uint8Array.of(0x31, 0x00, 0x2c, 0x00), 'utf-16le').text.decode(0, 2)).toBe('1,');
  });

  test('is taken for UTF-8 even where some bytes are damaged, with a warning', () => {
    const { said, warnings } = given(Uint8Array.of(0x31, 0xb0, 0x0a), 'utf8');
    expect([said, warnings]).toEqual([['utf-8', 'given'], ['damaged-characters']]);
  });

  test.each([
    ['no such thing', Uint8Array.of(0x31), 'names no encoding'],
    ['utf-16le', Uint8Array.of(0x31, 0x2c, 0x32, 0x0a), 'no digit is left'],
    ['utf-8', Uint8Array.of(0x31, 0x00, 0x2c, 0x00), 'two bytes for each character'],
    ['windows-1252', Uint8Array.of(0xff, 0xfe, 0x31, 0x00), 'two bytes for each character'],
  ])('%s is refused where it does not suit', (label, bytes, why) => {
    expect(() => given(bytes, label)).toThrow(
      expect.objectContaining({
        code: 'bad-option',
        message: expect.stringContaining(why) as string,
      }),
    );
  });
});
