import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseNumber, scanNumber } from '../../../../core/log/text/number.ts';

describe('a number', () => {
  test.each([
    ['25.5', 25.5],
    ['-3', -3],
    ['+7.25', 7.25],
    ['−4.5', -4.5],
    ['.5', 0.5],
    ['5.', 5],
    ['1.234e+04', 12_340],
    ['6.66667E-4', 0.000666667],
    ['1,050.5', 1050.5],
    ["1'050.5", 1050.5],
    ['1 050', 1050],
    ['12,345,678', 12_345_678],
  ])('with a decimal point: %s', (text, value) => {
    expect(parseNumber(text, '.')).toBe(value);
  });

  test.each([
    ['25,5', 25.5],
    ['-0,5', -0.5],
    ['1.050,5', 1050.5],
    ['1.050', 1050],
    ['2,5E+01', 25],
    ['1 050,5', 1050.5],
  ])('with a decimal comma: %s', (text, value) => {
    expect(parseNumber(text, ',')).toBe(value);
  });

  test.each([
    '',
    '-',
    '.',
    '1.2.3',
    '12:30',
    '1,05',
    '1,0500',
    ',5',
    '0x10',
    '1e',
    'Infinity',
    'NaN',
    '25.5C',
    '1 05',
    '--1',
  ])('is not: %s', (text) => {
    expect(parseNumber(text, '.')).toBeNaN();
  });

  test('is the double nearest to what is printed', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        fc.pre(!Object.is(value, -0));
        const printed = String(value);
        expect(parseNumber(printed, '.')).toBe(value);
        expect(parseNumber(printed.replace('.', ','), ',')).toBe(value);
      }),
      { numRuns: 2000 },
    );
  });
});

test('a number is found before what follows it', () => {
  expect(scanNumber('25.5 °C', '.')).toEqual({ value: 25.5, end: 4 });
  expect(scanNumber('°C', '.')).toBeNull();
});
