import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  BLANKS,
  FIXED,
  isWrappedLine,
  plainDialect,
  splitLine,
  WHOLE,
} from '../../../../core/log/delimited/split.ts';

const cells = (line: string, delimiter = ','): readonly string[] =>
  splitLine(line, plainDialect(delimiter)).cells;

describe('cells between marks', () => {
  test('are trimmed, and empty ones are kept', () => {
    expect(cells(' a , b,,c ,')).toEqual(['a', 'b', '', 'c', '']);
    expect(cells('')).toEqual(['']);
    expect(cells('a\tb c\t', '\t')).toEqual(['a', 'b c', '']);
  });

  test('may be quoted, with marks and quotes inside', () => {
    expect(cells('"a,b", "c ""d""",e')).toEqual(['a,b', 'c "d"', 'e']);
    expect(cells('12" pot,5')).toEqual(['12" pot', '5']);
    expect(cells("'a';'b'", ';')).toEqual(['a', 'b']);
    expect(cells('="2024",="20.5"')).toEqual(['2024', '20.5']);
  });

  test('say where a quote is left open', () => {
    expect(splitLine('a,"b', plainDialect(','))).toEqual({ cells: ['a', 'b'], isOpen: true });
    expect(splitLine('a,"b"', plainDialect(',')).isOpen).toBe(false);
  });

  test('are what a writer of RFC 4180 put in', () => {
    const cell = fc
      .string({ unit: fc.constantFrom(...'ab1,;" .-'), maxLength: 12 })
      .map((text) => text.trim());
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 8 }), (row) => {
        const line = row.map((text) => `"${text.replaceAll('"', '""')}"`).join(',');
        expect(cells(line)).toEqual(row);
      }),
      { numRuns: 1000 },
    );
  });
});

test('cells between runs of blanks', () => {
  expect(cells('  a  b\tc "d e" ', BLANKS)).toEqual(['a', 'b', 'c', 'd e']);
  expect(cells('   ', BLANKS)).toEqual([]);
});

test('cells of fixed width', () => {
  const dialect = { ...plainDialect(FIXED), cuts: [0, 6, 12] };
  expect(splitLine('06:30  20.5     3', dialect).cells).toEqual(['06:30', '20.5', '3']);
  expect(splitLine('06:30', dialect).cells).toEqual(['06:30', '', '']);
});

test('numbers that a comma tore apart', () => {
  const dialect = { ...plainDialect(','), joins: { cells: 5, firsts: [1, 3] } };
  expect(splitLine('06:30,20,5,-0,5', dialect).cells).toEqual(['06:30', '20,5', '-0,5']);
  expect(splitLine('06:30,20,5', dialect).cells).toEqual(['06:30', '20', '5']);
});

test('cells that carry their names', () => {
  const dialect = { ...plainDialect(BLANKS), labels: ['', 'temp', 'set'] };
  expect(splitLine('06:30 temp=20.5 set=-3', dialect).cells).toEqual(['06:30', '20.5', '-3']);
  expect(splitLine('06:30 set: -3 temp: 20.5', dialect).cells).toEqual(['06:30', '20.5', '-3']);
  expect(splitLine('06:30 set=-3', dialect).cells).toEqual(['06:30', '', '-3']);
});

test('rows in brackets', () => {
  const dialect = { ...plainDialect(','), isBracketed: true };
  const cells = ['2024-03-14', '20.5'];
  expect(splitLine("('2024-03-14', 20.5),", dialect).cells).toEqual(cells);
  expect(splitLine('2024-03-14,20.5', dialect).cells).toEqual(cells);
});

test('a line that is one cell', () => {
  expect(splitLine('20,5 C; hot', plainDialect(WHOLE)).cells).toEqual(['20,5 C; hot']);
});

test('whole lines in quotes', () => {
  expect(isWrappedLine('"a,b"')).toBe(true);
  expect(isWrappedLine('"a","b"')).toBe(false);
  expect(isWrappedLine('"a b"')).toBe(false);
  expect(splitLine('"06:30,20.5"', plainDialect(',', true)).cells).toEqual(['06:30', '20.5']);
  expect(splitLine('06:30,20.5', plainDialect(',', true)).cells).toEqual(['06:30', '20.5']);
});

test('splitting takes no longer than the line is long, many times over', () => {
  const hostile = '"'.repeat(60_000) + ','.repeat(4000);
  const started = performance.now();
  for (const delimiter of [',', ';', BLANKS]) cells(hostile, delimiter);
  expect(performance.now() - started).toBeLessThan(1000);
});
