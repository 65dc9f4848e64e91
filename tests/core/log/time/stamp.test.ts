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
    ['14/03/2024 14 h 05', '14 3 2024', 50_700, null],
    ['14/03/2024 14h05m09s', '14 3 2024', 50_709, null],
    ['14/Mar/2024:14:05:00 +0100', '14 3 2024', 50_700, 60],
    ['2024-03-14T14:05:00+01:00[Europe/Berlin]', '2024 3 14', 50_700, 60],
    ['Thu Mar 14 2024 14:05:00 GMT+0100 (Central European Standard Time)', '3 14 2024', 50_700, 60],
    ['2024-03-14T14:05:00\u221207:00', '2024 3 14', 50_700, -420],
    ['14/03/2024 2:05\u202fp.\u00a0m.', '14 3 2024', 50_700, null],
    ['14th of March 2024 14:05', '14 3 2024', 50_700, null],
  ])('%s', (text, date, clock, offset) => {
    expect(short(text)).toEqual([date, clock, offset]);
  });

  // The local marks of half days, as speakers of the six languages write them (from memory).
  test.each([
    ['14.03.2024 2:05 nachmittags', 14],
    ['14.03.2024 9:05 morgens', 9],
    ['14.03.2024 11:05 nachts', 23],
    ['14/03/2024 2:05 du matin', 2],
    ["14/03/2024 2:05 de l'après-midi", 14],
    ['14/03/2024 9:05 du soir', 21],
    ['14/03/2024 2:05 de la tarde', 14],
    ['14/03/2024 9:05 de la mañana', 9],
    ['14/03/2024 12:05 de la noche', 0],
    ['14/03/2024 9:05 di mattina', 9],
    ['14/03/2024 9:05 m.', 9],
    ['14/03/2024 2:05 p.', 14],
    ['14/03/2024 2:05 di notte', 2],
    ["14-03-2024 9:05 's ochtends", 9],
    ['14-03-2024 2:05 ’s middags', 14],
    ['14-03-2024 2:05 n.m.', 14],
  ])('%s', (text, hour) => {
    expect(scanStamp(text)?.clockSeconds).toBe(hour * 3600 + 300);
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
