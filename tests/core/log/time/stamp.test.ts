import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scanStamp } from '../../../../core/log/time/stamp.ts';

/** A stamp in short: the date's numbers, the clock's seconds, the offset. */
const short = (text: string): unknown => {
  const stamp = scanStamp(text);
  if (stamp === null) return null;
  const { date, clockSeconds, fraction, offsetMinutes } = stamp;
  return [
    date.map(({ value }) => value).join(' '),
    (clockSeconds ?? NaN) + fraction,
    offsetMinutes,
  ];
};

describe('dates and clocks as loggers write them', () => {
  test.each([
    ['2024-03-14 06:30:05', '2024 3 14', 23_405, null],
    ['2024-03-14T06:30:05.250Z', '2024 3 14', 23_405.25, 0],
    ['2020-05-04T15:29:38+02:00', '2020 5 4', 55_778, 120],
    ['2024-03-14 06:30 -0930', '2024 3 14', 23_400, -570],
    ['14.03.24, 06:30', '14 3 24', 23_400, null],
    ['00:30:00 21/Nov/2025', '21 11 2025', 1800, null],
    ['01-Sep-21 12:30:00 am', '1 9 21', 1800, null],
    ['3/14/2024 12:05 PM', '3 14 2024', 43_500, null],
    ['5. März 2024 14:05 Uhr', '5 3 2024', 50_700, null],
    ['5 de mayo de 2024 2:05 p. m.', '5 5 2024', 50_700, null],
    ['Thu, 14 Mar 2024 06:30:00 GMT', '14 3 2024', 23_400, 0],
    ['20190622-021507', '2019 6 22', 8107, null],
    ['20240314T063000Z', '2024 3 14', 23_400, 0],
    ['20240314063000', '2024 3 14', 23_400, null],
    ['[2024/3/4 6:05:07]', '2024 3 4', 21_907, null],
    ['Mar 14 06:30:00', '3 14', 23_400, null],
    ['14.03. 06:30', '14 3', 23_400, null],
    ['12:00:00:123', '', 43_200.123, null],
    ['100:05:00', '', 360_300, null],
    ['+00:05:00', '', 300, null],
    ['8am', '', 28_800, null],
    ['3 p.m.', '', 54_000, null],
    ['12h30', '', 45_000, null],
  ])('%s', (text, date, clock, offset) => {
    expect(short(text)).toEqual([date, clock, offset]);
  });

  test('a date alone', () => {
    expect(short('14/03/2024')).toEqual(['14 3 2024', NaN, null]);
  });
});

describe('what is no date and no clock', () => {
  test.each([
    ...['', '25.5', '2024', '12.30', '1-2', 'Kiln', '12:70', '10:20:30:40', '2019--0-6- 2 :13::1'],
    ...[
      '14/03/2024 extra',
      '13:00 am',
      '1.2.3.4',
      '2024-03-14 06:30 06:31',
      'x'.repeat(200),
      ':05',
    ],
  ])('%s', (text) => {
    expect(scanStamp(text)).toBeNull();
  });
});

test('any text is taken or refused, and in no time', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom(...'0123456789:-/. TZapm+'), maxLength: 64 }),
      (text) => {
        const stamp = scanStamp(text);
        if (stamp !== null) expect(stamp.date.length === 0 || stamp.date.length > 1).toBe(true);
      },
    ),
    { numRuns: 3000 },
  );
});
