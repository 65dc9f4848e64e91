import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { decideOrder, placeTime, planTime } from '../../../../core/log/columns/decide-time.ts';
import { daysFromCivil } from '../../../../core/log/time/civil.ts';
import { scanStamp } from '../../../../core/log/time/stamp.ts';
import { climb, decided, sampleOf } from '../helpers.ts';

const CONTEXT = { isFahrenheit: false, isContinental: false };
const sample = sampleOf(
  ['Time', 'Temp'],
  climb((c) => [c]),
);

describe('placing the time', () => {
  test('accounts for the column and why', () => {
    const account = new Account();
    expect(placeTime(sample, {}, account)).toMatchObject({ form: 'stamp', columns: [0] });
    expect(decided(account, 'time-column')).toEqual(['Time', 'name']);
  });

  test('takes the columns and the interval that the person gives', () => {
    const account = new Account();
    expect(placeTime(sample, { timeColumns: ['time'] }, account)).toMatchObject({ columns: [0] });
    expect(placeTime(sample, { intervalSeconds: 30 }, account)).toMatchObject({ seconds: 30 });
    expect(decided(account, 'interval')).toEqual(['30 s', 'given']);
  });

  test('falls back on an interval above the table', () => {
    const account = new Account();
    const rows = climb((c) => [c]).map(([, c]) => [c!]);
    const bare = sampleOf(['Kiln'], rows, { preamble: ['Log interval: 00:01:00'] });
    expect(placeTime(bare, {}, account)).toMatchObject({ form: 'interval', seconds: 60 });
    expect(account.warnings()).toEqual(['interval-assumed']);
    expect(account.assumptions()).toEqual(['interval']);
  });

  test('refuses columns that are not there or hold no time, and a table without one', () => {
    const refuses = (names: string[], code: string) =>
      expect(() => placeTime(sample, { timeColumns: names }, new Account())).toThrow(
        expect.objectContaining({ code }),
      );
    refuses(['Clock'], 'bad-option');
    const words = sampleOf(
      ['Note', 'Temp'],
      climb((c) => [c]).map(([, c], i) => [`word ${'ab'[i % 2]}`, c!]),
    );
    expect(() => placeTime(words, { timeColumns: ['Note'] }, new Account())).toThrow(
      expect.objectContaining({ code: 'bad-option' }),
    );
    expect(() => placeTime(words, {}, new Account())).toThrow(
      expect.objectContaining({ code: 'no-time', line: 7 }),
    );
  });
});

describe('planning the time', () => {
  test('counts from the first day and describes how stamps are written', () => {
    const account = new Account();
    const place = placeTime(sample, {}, account);
    expect(planTime(sample, place, CONTEXT, {}, account)).toEqual({
      time: { form: 'stamp', column: 0, order: 'year-first' },
      originDays: daysFromCivil(2024, 3, 14),
    });
    expect(decided(account, 'time-pattern')).toEqual(['YYYY-MM-DD hh:mm:ss', 'rows-agree']);
  });

  test('says where a date has no year', () => {
    const account = new Account();
    const yearless = sampleOf(
      ['Time', 'Temp'],
      climb((c) => [c]).map(([, c], i) => [`Mar 14 06:${10 + i}:00`, c!]),
    );
    planTime(yearless, placeTime(yearless, {}, account), CONTEXT, {}, account);
    expect(account.assumptions()).toEqual(['no-year']);
  });
});

describe('the order of day and month', () => {
  const open = [scanStamp('03/04/2024 10:00')!, scanStamp('03/04/2024 11:00')!];

  test('is accounted for, and an assumption is warned of', () => {
    const account = new Account();
    expect(decideOrder(open, sample, ['Time'], CONTEXT, {}, account)).toBe('day-first');
    expect(account.warnings()).toEqual(['day-order-assumed']);
    expect(account.assumptions()).toEqual(['day-first']);
  });

  test('follows the person, and a pattern in the name of the column', () => {
    const account = new Account();
    const order = (names: string[], decisions = {}) =>
      decideOrder(open, sample, names, CONTEXT, decisions, account);
    expect(order(['Time'], { dayOrder: 'month-first' })).toBe('month-first');
    expect(decided(account, 'day-order')).toEqual(['month-first', 'given']);
    expect(order(['Time (MM/DD/YYYY)'])).toBe('month-first');
    expect(decided(account, 'day-order')).toEqual(['month-first', 'declared']);
  });
});
