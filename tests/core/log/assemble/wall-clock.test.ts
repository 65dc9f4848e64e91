import { expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { wallClock } from '../../../../core/log/assemble/wall-clock.ts';
import { Refusal } from '../../../../core/model/refusal.ts';

/** 2024-03-31, on which clocks of the EU go forward at 01:00 UTC (directive 2000/84/EC). */
const DAY = 19_813;
const seconds = Float64Array.of(1.5 * 3600, 3.5 * 3600);

test('without a zone stands as it was printed, without an offset', () => {
  const time = wallClock(seconds, DAY, 'hh:mm', {}, new Account());
  expect([...time.seconds]).toEqual([...seconds]);
  expect([0, 1].map(time.instantOf)).toEqual(['2024-03-31T01:30:00', '2024-03-31T03:30:00']);
});

test('in a zone runs on over the hour that was left out, each row with its offset', () => {
  const account = new Account();
  const time = wallClock(seconds, DAY, 'hh:mm', { timeZone: 'Europe/Paris' }, account);
  expect(time.seconds[1]! - time.seconds[0]!).toBe(3600);
  expect([0, 1].map(time.instantOf)).toEqual([
    '2024-03-31T01:30:00+01:00',
    '2024-03-31T03:30:00+02:00',
  ]);
  expect(account.decisions()).toMatchObject([{ what: 'time-zone', why: 'given' }]);
});

test('in a zone that is none is refused', () => {
  expect(() => wallClock(seconds, DAY, '', { timeZone: 'Mars/Base' }, new Account())).toThrow(
    Refusal,
  );
});
