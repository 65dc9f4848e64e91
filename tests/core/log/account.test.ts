import { expect, test } from 'vitest';
import { Account } from '../../../core/log/account.ts';

test('a decision made again replaces the first and keeps its place', () => {
  const account = new Account();
  account.decide('encoding', 'utf-8', 'valid-utf8', 0.99);
  account.decide('unit', 'C', 'plausible', 0.5);
  account.decide('encoding', 'windows-1252', 'not-utf8', 0.7);
  expect(account.decisions()).toEqual([
    { what: 'encoding', choice: 'windows-1252', why: 'not-utf8', certainty: 0.7 },
    { what: 'unit', choice: 'C', why: 'plausible', certainty: 0.5 },
  ]);
});

test('an assumed day order can be settled', () => {
  const account = new Account();
  account.assume('day-first');
  account.warn('day-order-assumed');
  account.settleDayOrder('month-first');
  expect([account.assumptions(), account.warnings()]).toEqual([[], []]);
  expect(account.decisions()[0]).toMatchObject({ choice: 'month-first', why: 'part-over-twelve' });
});

test('a warning and an assumption are noted once', () => {
  const account = new Account();
  for (let times = 0; times < 2; times += 1) {
    account.warn('unit-assumed');
    account.assume('no-year');
  }
  expect(account.warnings()).toEqual(['unit-assumed']);
  expect(account.assumptions()).toEqual(['no-year']);
});
