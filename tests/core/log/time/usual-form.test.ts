import { describe, expect, test } from 'vitest';
import { usualForm } from '../../../../core/log/time/usual-form.ts';

const text = (stamp: string): string | null => usualForm(stamp)?.text ?? null;

// ISO 8601:2004, 4.1.3 and 4.1.4; the weeks around New Year from memory of the standard's rules.
describe('dates of other calendars', () => {
  test.each([
    ['2004-W53-6', '2005-01-01'],
    ['2005-W52-7', '2006-01-01'],
    ['2009-W01-1', '2008-12-29'],
    ['2009-W53-7', '2010-01-03'],
    ['1985-W15-5T10:15:30', '1985-04-12T10:15:30'],
    ['1985W155T101530', '1985-04-12T101530'],
    ['1985-102', '1985-04-12'],
    ['1985-102T23:50:30', '1985-04-12T23:50:30'],
    ['1985102 23:50', '1985-04-12 23:50'],
    ['2024-366', '2024-12-31'],
  ])('%s is %s', (stamp, usual) => {
    expect(text(stamp)).toBe(usual);
    expect(usualForm(stamp)?.dateForm).toBe(stamp.includes('W') ? 'weeks' : 'ordinal');
  });

  test.each(['2023-366', '2024-000', '2024-W54-1', '2024-W10-8', '2024102', '2024-03-14'])(
    '%s is none',
    (stamp) => {
      expect(text(stamp)).toBeNull();
    },
  );
});

test.each([
  ['DT#2024-03-14-06:30:00', '2024-03-14 06:30:00'],
  ['TOD#06:30:00', '06:30:00'],
  ['2024-03-14_06-30-00', '2024-03-14 06:30:00'],
  ['2024-03-14T06-30', '2024-03-14 06:30'],
  ['14.03.2024 06.30.00', '14.03.2024 06:30:00'],
  ['14.03.2024 6.30', '14.03.2024 6:30'],
  ['13.30 Uhr', '13:30:00'],
  ['2024年3月14日 6時30分05秒', '2024-3-14  6:30:05'],
  ['2024/3/14 下午 6:30', '2024/3/14  pm  6:30'],
])('%s becomes %s', (stamp, usual) => {
  expect(text(stamp)).toBe(usual);
});

test.each(['2024-03-14 06:30', '14/03/24 06.30', '06-30-00', '25.5', 'note', ''])(
  '%j is left alone',
  (stamp) => {
    expect(text(stamp)).toBeNull();
  },
);
