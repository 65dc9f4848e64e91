import { describe, expect, test } from 'vitest';
import {
  dosesWith,
  holdDoses,
  standingWith,
  truthOf,
} from '../../../core/heatwork/firing-record.ts';
import { firing } from '../../builders/trace.ts';
import { cone6, hold, ramp, record } from './measuring.ts';

describe('a firing’s record', () => {
  test('takes self-supporting cones and an ordinary couple unless told', () => {
    const fired = record(cone6());
    expect(fired.coneType).toBe('self-supporting');
    expect(fired.topToleranceC).toBeCloseTo(0.0075 * 1215, 1);
    expect(record(cone6(), { coneType: 'large' }).coneType).toBe('large');
  });

  test('corrects an error in proportion to temperature where the class is a percentage', () => {
    const truth = truthOf(record(cone6()), 9);
    expect(truth(1215)).toBeCloseTo(1206, 1);
    expect(truth(607.5)).toBeCloseTo(603, 1);
  });

  test('stands lower the more the readings are too high', () => {
    const fired = record(cone6(1222));
    const places = [-9, 0, 9].map((errorC) => standingWith(fired, errorC).position!);
    expect(places[0]! - places[1]!).toBeGreaterThan(0.3);
    expect(places[1]! - places[2]!).toBeGreaterThan(0.3);
    expect(dosesWith(fired, 9)[0]).toBeLessThan(dosesWith(fired, 0)[0]!);
  });

  test('counts the holds near the top, not those low down', () => {
    const low = record(firing(20, ramp(100, 600), hold(120), ramp(100, 1200), ramp(250, 300)));
    expect(Math.max(...holdDoses(low))).toBe(0);
    const fired = record(cone6(1215, 20));
    const share = holdDoses(fired).at(-8)! / dosesWith(fired, 0).at(-8)!;
    expect(share).toBeGreaterThan(0.3);
    expect(share).toBeLessThan(0.6);
  });
});
