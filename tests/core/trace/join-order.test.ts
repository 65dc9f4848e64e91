import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import type { Channel } from '../../../core/model/source.ts';
import { joinOrder, type Recorded } from '../../../core/trace/join-order.ts';
import { plainSource } from '../../builders/log.ts';
import { CUT_SHORT, RUN_AGAIN, runOf, twoRuns } from '../../builders/runs.ts';

const recorded = ({ log, trace }: ReturnType<typeof runOf>): Recorded => ({
  source: log.source,
  trace,
});
const [first, second] = twoRuns().map(recorded) as [Recorded, Recorded];

const named = (run: Recorded, name: string, format: 'delimited' | 'typed-in' = 'delimited') => {
  const channel: Channel = { ...plainSource(1).channels[0]!, name };
  return { ...run, source: { ...run.source, format, channels: [channel] } };
};

const refusal = (one: Recorded, other: Recorded): Refusal => {
  try {
    joinOrder(one, other);
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
  throw new Error('was joined');
};

describe('the order of two logs of one load', () => {
  test.each([
    ['as they were given', [first, second]],
    ['turned round', [second, first]],
  ] as const)('is that of their dates, %s', (_, [one, other]) => {
    const order = joinOrder(one, other);
    expect(order.earlier).toBe(first);
    expect(order.later).toBe(second);
    expect(order.laterBeginsSeconds).toBe(24 * 3600);
    expect(order.isGapKnown).toBe(true);
  });

  test.each([
    ['either has no date', null, null],
    ['the first has none', null, '2026-03-02T08:00:00'],
    ['the second has none', '2026-03-01T08:00:00', null],
    ['only one says its offset', '2026-03-02T08:00:00Z', '2026-03-01T08:00:00'],
  ])('is that in which they were given where %s, and the gap is not known', (_, from, to) => {
    const [one, other] = [recorded(runOf(CUT_SHORT, from)), recorded(runOf(RUN_AGAIN, to))];
    const order = joinOrder(one, other);
    expect(order.earlier).toBe(one);
    expect(order.isGapKnown).toBe(false);
    expect(order.laterBeginsSeconds).toBeGreaterThan(one.trace.summary.durationSeconds);
  });

  test('does not fit logs that ran at the same time', () => {
    const { durationSeconds } = first.trace.summary;
    const beginsAfter = (seconds: number) =>
      recorded(
        runOf(
          RUN_AGAIN,
          new Date(Date.UTC(2026, 2, 1, 8) + seconds * 1000).toISOString().slice(0, 19),
        ),
      );
    const during = beginsAfter(Math.floor(durationSeconds) - 60);
    expect(refusal(first, during).code).toBe('cannot-join');
    expect(refusal(during, first).message).toContain('same time');
    expect(joinOrder(first, beginsAfter(Math.ceil(durationSeconds) + 60)).isGapKnown).toBe(true);
  });

  test.each([true, false])('does not fit one log twice, dated: %s', (isDated) => {
    const run = recorded(twoRuns(isDated)[0]);
    expect(refusal(run, { ...run }).message).toContain('same log twice');
  });

  test('does not fit logs that name different thermocouples', () => {
    const { code, message } = refusal(named(first, 'Big kiln'), named(second, 'Test kiln'));
    expect(code).toBe('cannot-join');
    expect(message).toContain('big kiln');
    expect(message).toContain('test kiln');
  });

  test.each([
    ['the same name, written otherwise', named(first, 'Kiln'), named(second, ' kiln')],
    ['a column without a name', named(first, 'column 2'), named(second, 'Kiln')],
    ['readings typed by hand', named(first, 'temperature', 'typed-in'), named(second, 'Kiln')],
  ])('takes %s', (_, one, other) => {
    expect(joinOrder(one, other).later).toBe(other);
  });
});
