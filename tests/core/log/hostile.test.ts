import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import { zSource } from '../../../core/model/source.ts';
import { seededRandom, type SeededRandom } from '../../builders/random.ts';

const FOLDER = new URL('../../fixtures/logs/', import.meta.url);
const RUNS = 10_000;
/** No file of this size may take longer, whatever is in it. */
const LONGEST_SECONDS = 2;

/** What is put into files: what breaks quotes, lines, numbers, names and encodings. */
const PIECES = [
  ...['"', '""', '"unclosed', ',', ';', '\t', '\n', '\r', '\0', '[', ']', '{', '}', ':', '/', '#'],
  ...['-', '--', '.', '1e309', 'NaN', '999999999999999999999', 'OPEN', '=1+1', '<script>', '  '],
  ...[
    '__proto__',
    'constructor',
    'é',
    '😀',
    '\u2028',
    '0'.repeat(70),
    ','.repeat(30),
    'a'.repeat(300),
  ],
];

const bytesOf = (random: SeededRandom): Uint8Array => {
  const count = 1 + Math.floor(random.uniform() * 12);
  const text = Array.from({ length: count }, () => random.pick(PIECES)).join('');
  return new TextEncoder().encode(text);
};

/** One wound: something put in, struck out, overwritten, or doubled. */
const wounded = (bytes: Uint8Array, random: SeededRandom): Uint8Array => {
  const at = Math.floor(random.uniform() * bytes.length);
  const length = Math.floor(random.uniform() ** 2 * 400);
  const kind = random.pick(['put', 'strike', 'over', 'double', 'noise'] as const);
  const noise = Uint8Array.from({ length: 20 }, () => Math.floor(random.uniform() * 256));
  const middle =
    kind === 'noise' ? noise : kind === 'double' ? bytes.slice(at, at + length) : bytesOf(random);
  const skipped = kind === 'strike' || kind === 'over' ? length : 0;
  const into = kind === 'strike' ? new Uint8Array() : middle;
  return Uint8Array.from([...bytes.subarray(0, at), ...into, ...bytes.subarray(at + skipped)]);
};

describe('wounded files', () => {
  const files = readdirSync(FOLDER).filter((file) => !/^(README|truth)/.test(file));
  const originals = files.map((file) => new Uint8Array(readFileSync(new URL(file, FOLDER))));

  test(`${RUNS} of them are read with an account that adds up, or refused in words`, () => {
    const random = seededRandom(20240314);
    let refused = 0;
    let slowest = 0;
    for (let run = 0; run < RUNS; run += 1) {
      let bytes: Uint8Array = random.pick(originals);
      const wounds = 1 + Math.floor(random.uniform() * 6);
      for (let wound = 0; wound < wounds; wound += 1) bytes = wounded(bytes, random);
      const started = performance.now();
      try {
        const { source, celsius, atSeconds } = readLog(bytes, 'x');
        expect(zSource.safeParse(source).error).toBeUndefined();
        expect(celsius).toHaveLength(source.rowsKept);
        expect(celsius.every(Number.isFinite) && atSeconds.every(Number.isFinite)).toBe(true);
      } catch (thrown) {
        if (!(thrown instanceof Refusal)) throw thrown;
        refused += 1;
        expect(thrown.message).not.toMatch(/undefined|\[object|\n|\.ts\b/);
      }
      slowest = Math.max(slowest, (performance.now() - started) / 1000);
    }
    expect(refused).toBeLessThan(RUNS / 2);
    expect(slowest).toBeLessThan(LONGEST_SECONDS);
  });
});

describe('files made to take long', () => {
  const repeated = (text: string): string => text.repeat(Math.ceil(2_000_000 / text.length));

  test.each([
    ['delimiters', repeated(',')],
    ['quotes', repeated('"')],
    ['quotes that open each line', repeated('1,"a\n')],
    ['blanks before a word', `${repeated(' ')}x`],
    ['digits', repeated('7')],
    ['brackets', repeated('[1,')],
    ['records without end', `[${repeated('{"a":1},')}`],
    ['escapes in one string', `["${repeated('\\\\')}"]`],
    [
      'records with names of their own',
      `[${Array.from({ length: 60_000 }, (_, i) => `{"k${i}":${i},"t":${i}}`).join(',')}]`,
    ],
    ['broken JSON lines', repeated('{"t":1,"c":\n')],
    ['wide lines', repeated(`${'1,'.repeat(5000)}\n`)],
    ['long lines', repeated(`${'a'.repeat(60_000)}\n`)],
    ['comment signs', repeated(`${'#'.repeat(1000)}\n`)],
    ['header after header', `Time,Temp\n${repeated('Time,Temp\n')}`],
    ['carriage returns', repeated('\r')],
  ])('%s', (_, text) => {
    const bytes = new TextEncoder().encode(text);
    const started = performance.now();
    expect(() => readLog(bytes, 'x')).toThrow(Refusal);
    expect((performance.now() - started) / 1000).toBeLessThan(LONGEST_SECONDS);
  });
});
