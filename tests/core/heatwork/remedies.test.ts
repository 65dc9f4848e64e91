import { describe, expect, test } from 'vitest';
import { firingParts } from '../../../core/heatwork/firing-parts.ts';
import { measured } from '../../../core/heatwork/measured.ts';
import { remediesFor, type RemedyQuestion } from '../../../core/heatwork/remedies.ts';
import type { HeatWork, Remedy } from '../../../core/model/document.ts';
import { firing, traceFrom, type CurvePoint } from '../../builders/trace.ts';
import { cone6, hold, measure, ramp } from './measuring.ts';

const remedy = ({ remedies }: HeatWork, kind: Remedy['kind']): Remedy =>
  remedies.find((one) => one.kind === kind)!;

const ordered = ({ lowAmount, amount, highAmount }: Remedy): boolean =>
  lowAmount <= amount && (highAmount === null || amount <= highAmount);

/** With a couple that hardly errs, so that the amounts' own accuracy is seen. */
const couple = { type: 'S', class: 'class-1' } as const;

describe('a remedy, carried out, brings the cone that was meant', () => {
  const short = (topC: number, minutes: number, lastRate = 60): CurvePoint[] =>
    firing(
      ...([20, ramp(150, 1086), ramp(lastRate, topC)] as const),
      ...[...(minutes > 0 ? [hold(minutes)] : []), ramp(250, 300)],
    );
  const fired = measure(short(1186, 10), { target: '6', couple });

  test('a longer hold', () => {
    const { amount, unit } = remedy(fired, 'longer-hold');
    expect(unit).toBe('min');
    const again = measure(short(1186, 10 + amount), { couple });
    expect(Math.abs(again.cone.position! - 6)).toBeLessThan(0.05);
  });

  test('a higher peak', () => {
    const { amount, unit } = remedy(fired, 'higher-peak');
    expect(unit).toBe('C');
    const again = measure(short(1186 + amount, 10), { couple });
    expect(Math.abs(again.cone.position! - 6)).toBeLessThan(0.1);
  });

  test('a slower last ramp, as the rate it should have had', () => {
    const { amount, unit } = remedy(fired, 'slower-last-ramp');
    expect(unit).toBe('C/h');
    expect(amount).toBeLessThan(60);
    const again = measure(short(1186, 10, amount), { couple });
    expect(Math.abs(again.cone.position! - 6)).toBeLessThan(0.05);
  });

  test('a shorter hold', () => {
    const over = measure(cone6(1205, 60), { target: '6', couple });
    expect(over.target!.verdict).toBe('over');
    const { amount } = remedy(over, 'shorter-hold');
    const again = measure(cone6(1205, 60 - amount), { couple });
    expect(Math.abs(again.cone.position! - 6)).toBeLessThan(0.05);
  });

  test('a lower peak', () => {
    const over = measure(cone6(1240, 10), { target: '6', couple });
    const { amount } = remedy(over, 'lower-peak');
    const again = measure(cone6(1240 - amount, 10), { couple });
    expect(Math.abs(again.cone.position! - 6)).toBeLessThan(0.1);
  });
});

describe('the range of a remedy', () => {
  test('holds the amount, and is wider for a couple that errs more', () => {
    const by = (type: 'K' | 'S') =>
      measure(cone6(1190), { target: '6', couple: { type, class: 'class-2' } }).remedies;
    for (const one of [...by('K'), ...by('S')]) expect(ordered(one)).toBe(true);
    for (const [k, s] of by('K').map((one, i) => [one, by('S')[i]!] as const)) {
      const width = (one: Remedy) => one.highAmount! - one.lowAmount;
      expect(k.kind).toBe(s.kind);
      if (k.highAmount !== null) expect(width(k)).toBeGreaterThan(width(s));
    }
  });

  test('of a hold spans what the published rules make of a cone: 15 min to 2 h', () => {
    const fired = measure(cone6(1186), { target: '6' });
    const { lowAmount, amount, highAmount } = remedy(fired, 'longer-hold');
    expect(lowAmount).toBeLessThan(25);
    expect(amount).toBeGreaterThan(15);
    expect(amount).toBeLessThan(120);
    expect(highAmount).toBeGreaterThan(90);
  });

  test('has no upper end where nothing within reason is certain', () => {
    // A whole hold of 10 min cannot take back half a cone and the couple's doubt.
    const over = measure(cone6(1222, 10), { target: '6' });
    expect(remedy(over, 'shorter-hold').highAmount).toBeNull();
  });
});

describe('remedies', () => {
  test('are none within half a cone, without a target, and for a mere bound', () => {
    expect(measure(cone6(1210), { target: '6' }).remedies).toEqual([]);
    expect(measure(cone6(1100)).remedies).toEqual([]);
    expect(measure(firing(20, ramp(60, 1186)), { target: '6' }).remedies).toEqual([]);
  });

  test('leave out what is not within reason', () => {
    const farShort = measure(firing(20, ramp(60, 1060), ramp(250, 300)), { target: '6' });
    expect(farShort.remedies).toEqual([]);
    const fast = measure(cone6(1170), { target: '6' });
    expect(fast.remedies.map(({ kind }) => kind)).toContain('higher-peak');
    expect(fast.remedies.map(({ kind }) => kind)).not.toContain('slower-last-ramp');
  });

  test('offer no hold at all where that comes within half a cone', () => {
    // 30 min at 1205 °C after 150 °C/h: cone 5 without the hold, cone 6 with it.
    const over = measure(firing(20, ramp(150, 1205), hold(30), ramp(200, 300)), { target: '5' });
    expect(remedy(over, 'shorter-hold').amount).toBeCloseTo(30, 1);
    expect(remedy(over, 'shorter-hold').highAmount).toBeNull();
  });

  test('are told of positions that no cone reaches as nothing', () => {
    const trace = traceFrom(cone6(1186), { intervalSeconds: 20 });
    const all = measured(trace, { target: null, legs: trace.summary.legs });
    const question: RemedyQuestion = {
      cones: all.record.cones,
      target: 15,
      direction: 'more',
      offCones: 10,
      downCones: 0.4,
      upCones: 0.4,
    };
    expect(remediesFor(firingParts(all)!, question)).toEqual([]);
  });
});
