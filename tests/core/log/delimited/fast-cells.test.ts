import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FastStamps, fastNumber, markByte } from '../../../../core/log/delimited/fast-cells.ts';
import { TimeReader } from '../../../../core/log/time/time-reader.ts';
import { parseNumber } from '../../../../core/log/text/number.ts';
import { daysFromCivil } from '../../../../core/log/time/civil.ts';
import { utf8 } from '../helpers.ts';

const number = (text: string, mark: '.' | ',' = '.'): number =>
  fastNumber(utf8(text), 0, text.length, markByte(mark));

describe('a plain number from bytes', () => {
  test('is the careful one, or left to it', () => {
    const plain = fc.tuple(
      fc.integer({ min: -1e9, max: 1e9 }),
      fc.nat(6),
      fc.constantFrom('.', ',' as const),
    );
    fc.assert(
      fc.property(plain, ([digits, decimals, mark]) => {
        const text = (digits / 10 ** decimals).toFixed(decimals).replace('.', mark);
        expect(number(text, mark)).toBe(parseNumber(text, mark));
      }),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789.,-+e '), maxLength: 24 }),
        (text) => {
          const fast = number(text);
          if (!Number.isNaN(fast)) expect(fast).toBe(parseNumber(text.trim(), '.'));
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('leaves what it cannot hold exactly', () => {
    for (const text of ['', '-', '1e3', '1234567890.1234567', ' 1', '1,5'])
      expect(number(text)).toBeNaN();
  });
});

describe('a stamp from bytes', () => {
  const DAY = daysFromCivil(2024, 3, 14);
  const both = (text: string, order: 'year-first' | 'day-first' | 'month-first') => {
    const fast = new FastStamps(order, DAY);
    const careful = new TimeReader({ form: 'stamp', column: 0, order }, DAY, '.');
    const seconds = fast.stamp(utf8(text), 0, text.length);
    return {
      fast: [seconds, fast.offsetMinutes],
      careful: [careful.stampSeconds(text), careful.offsetMinutes],
    };
  };

  test.each([
    ['2024-03-14 06:30:05', 'year-first'],
    ['2024-03-14T06:30', 'year-first'],
    ['2024/3/4 6:05:07.25', 'year-first'],
    ['2024-03-14T06:30:00.123456Z', 'year-first'],
    ['2024-03-14T06:30:00-09:30', 'year-first'],
    ['14.03.2024 23:59:60', 'day-first'],
    ['03/14/2024 24:00:00', 'month-first'],
  ] as const)('is the careful one: %s', (text, order) => {
    const { fast, careful } = both(text, order);
    expect(fast).toEqual(careful);
    expect(fast[0]).not.toBeNaN();
  });

  test.each([
    '14/03/24 06:30',
    '2024-03-14',
    '2024-02-30 06:30',
    '2024-03-14 06:30 pm',
    '14 Mar 2024 06:30',
    '2024-03-14 25:00',
    '2024-03-14 06:30x',
    '2024-03.14 06:30',
    '',
  ])('is left to the careful path: %s', (text) => {
    expect(new FastStamps('day-first', DAY).stamp(utf8(text), 0, text.length)).toBeNaN();
  });

  test('is the careful one for any text that it takes', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789-/:. TZ+'), maxLength: 28 }),
        fc.constantFrom('day-first' as const, 'month-first' as const),
        (text, order) => {
          const { fast, careful } = both(`2024-03-14 ${text}`, order);
          if (!Number.isNaN(fast[0])) expect(fast).toEqual(careful);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('a date and a clock apart, and a clock beyond a day', () => {
    const stamps = new FastStamps('day-first', DAY);
    expect(stamps.dateAndClock(utf8('14.03.2024;06:30'), 0, 10, 11, 16)).toBe(23_400);
    expect(stamps.clock(utf8('100:00:30.5'), 0, 11)).toBe(360_030.5);
    expect(stamps.clock(utf8('06:30 pm'), 0, 8)).toBeNaN();
  });
});
