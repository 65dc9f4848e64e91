import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { resolveTime } from '../../../../core/log/assemble/resolve-time.ts';
import { planColumns } from '../../../../core/log/columns/plan-columns.ts';
import { RawColumns } from '../../../../core/log/columns/raw-columns.ts';
import { RowReader } from '../../../../core/log/columns/row-reader.ts';
import { decided, sampleOf } from '../helpers.ts';

const resolved = (name: string, cells: readonly (string | number)[]) => {
  const account = new Account();
  const rows = cells.map((cell, i) => [cell, 20.5 + 37 * i]);
  const sample = sampleOf([name, 'Kiln °C'], rows);
  const plan = planColumns(sample, {}, { isContinental: false, sectionTime: null }, account);
  const reader = new RowReader(plan, new RawColumns(plan.wanted.length, 4, false));
  sample.rows.forEach((row, i) => reader.add(row, i + 2, reader.timeOf(row)));
  const time = resolveTime(plan, sample, reader.columns, 37 * (cells.length - 1), {}, account);
  return {
    time,
    account,
    first: time.instantOf(0),
    seconds: [...time.seconds].map((value) => value - time.seconds[0]!),
  };
};
const steps = (count: number, step: number): number[] =>
  Array.from({ length: count }, (_, i) => i * step);

describe('times become seconds on one clock', () => {
  test('from dates, with the instant as printed', () => {
    const { first, seconds, time } = resolved('Time', [
      '2024-03-31T01:59:00+01:00',
      '2024-03-31T03:00:00+02:00',
      '2024-03-31T03:01:00+02:00',
    ]);
    expect([first, time.kind, seconds]).toEqual([
      '2024-03-31T01:59:00+01:00',
      'instant',
      [0, 60, 120],
    ]);
    expect(time.instantOf(2)).toBe('2024-03-31T03:01:00+02:00');
  });

  test('from dates without a year, over New Year', () => {
    const { first, seconds, time } = resolved('Time', [
      'Dec 31 23:50',
      'Jan 1 00:00',
      'Jan 1 00:10',
    ]);
    expect([first, time.kind, seconds]).toEqual([null, 'elapsed', [0, 600, 1200]]);
  });

  test('from seconds and milliseconds since 1970', () => {
    const { first, seconds } = resolved(
      'ts',
      steps(30, 60).map((step) => 1710397800 + step),
    );
    expect([first, seconds[29]]).toEqual(['2024-03-14T06:30:00Z', 1740]);
    expect(
      resolved(
        'ts',
        steps(30, 60_000).map((step) => 1710397800_250 + step),
      ).first,
    ).toBe('2024-03-14T06:30:00.25Z');
  });

  test('from days of a spreadsheet', () => {
    // 45365 is 2024-03-14 in the 1900 date system (ECMA-376 part 1, 18.17.4).
    const { first, time } = resolved(
      'Date',
      steps(30, 60).map((step) => 45_365.25 + step / 86_400),
    );
    expect([first, time.pattern]).toEqual(['2024-03-14T06:00:00', 'spreadsheet days']);
  });

  test('from bare numbers, by their header or by the course', () => {
    const named = resolved('Time (h)', steps(30, 0.5));
    expect([named.seconds[2], decided(named.account, 'time-unit')]).toEqual([
      3600,
      ['h', 'header'],
    ]);
    const bare = resolved('Time', steps(30, 15));
    expect(decided(bare.account, 'time-unit')).toEqual(['min', 'plausible']);
    expect([
      bare.account.assumptions(),
      bare.account.warnings().includes('time-unit-assumed'),
    ]).toEqual([['minutes'], true]);
  });

  test('from a clock across midnight, with a word about the missing date', () => {
    const { seconds, time, account } = resolved('Clock', ['23:40', '23:50', '00:00', '00:10']);
    expect([seconds, time.kind]).toEqual([[0, 600, 1200, 1800], 'elapsed']);
    expect(account.warnings()).toContain('no-date');
  });

  test('from minutes and seconds', () => {
    const { seconds, account } = resolved('Elapsed (mm:ss)', ['0:00', '5:30', '11:00', '16:30']);
    expect([seconds, account.assumptions()]).toEqual([[0, 330, 660, 990], ['minutes-and-seconds']]);
  });
});
