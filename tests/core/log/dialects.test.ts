import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { plainDialect, splitLine } from '../../../core/log/delimited/split.ts';

/** The dialect decisions against a general-purpose reader of CSV, on the fixtures it can read. */

const FOLDER = new URL('../../fixtures/logs/', import.meta.url);
const truths = JSON.parse(readFileSync(new URL('truth.json', FOLDER), 'utf8')) as object;

/** Where the general-purpose reader finds another delimiter, and why ours is right. */
const GUESSES_OTHERWISE: Readonly<Record<string, string>> = {
  'preamble-of-keys.csv': 'it looks at the first ten lines, and keys and values stand there',
  'microvolts-in-cells.csv': 'lines without a delimiter above the table weigh against two columns',
  'unit-in-preamble-german.csv': 'decimal commas stand in as many of its first lines',
  'preamble-of-prose.txt': 'it takes the commas of sentences above the table',
};

/** The delimiter that it guesses; its declaration here leaves that out. */
const guessed = (text: string): string => {
  const parsed: unknown = Papa.parse(text, { skipEmptyLines: true });
  return (parsed as { meta: { delimiter: string } }).meta.delimiter;
};

/** Single quotes and `="…"` around a whole cell are part of it to the general-purpose reader. */
const unquoted = (cell: string): string =>
  /^(?:'(.*)'|="(.*)")$/.exec(cell)?.slice(1).join('') ?? cell;

const shared = Object.keys(truths).flatMap((name) => {
  const bytes = new Uint8Array(readFileSync(new URL(name, FOLDER)));
  const { delimiter, encoding } = readLog(bytes, name).source;
  const isShared = delimiter !== null && [',', ';', '\t', '|'].includes(delimiter);
  return isShared ? [{ name, delimiter, text: new TextDecoder(encoding).decode(bytes) }] : [];
});

describe('a general-purpose reader', () => {
  test('can read most of the fixtures', () => {
    expect(shared.length).toBeGreaterThan(70);
  });

  test('finds the same delimiter', () => {
    const otherwise = shared
      .filter(({ name }) => GUESSES_OTHERWISE[name] === undefined)
      .map(({ name, delimiter, text }) => ({
        name,
        ours: delimiter,
        theirs: guessed(text.replaceAll('\0', '')),
      }))
      .filter(({ ours, theirs }) => ours !== theirs);
    expect(otherwise).toEqual([]);
  });

  test('differs where it is said to', () => {
    const named = shared.filter(({ name }) => GUESSES_OTHERWISE[name] !== undefined);
    expect(named).toHaveLength(Object.keys(GUESSES_OTHERWISE).length);
    for (const { delimiter, text } of named) {
      expect(guessed(text)).not.toBe(delimiter);
    }
  });

  test('finds the same cells', () => {
    for (const { name, delimiter, text } of shared) {
      const lines = text
        .split(/\r\n|\r|\n/)
        .filter((line) => line.trim() !== '' && !line.includes('\0'));
      for (const line of lines) {
        const [theirs] = Papa.parse(line, { delimiter }).data;
        const { cells, isOpen } = splitLine(line, plainDialect(delimiter));
        if (isOpen) continue;
        expect([name, cells]).toEqual([name, theirs?.map((cell) => unquoted(cell.trim()))]);
      }
    }
  });
});
