import { describe, expect, test } from 'vitest';
import type { HeatWorkQuestion } from '../../../core/heatwork/firing-record.ts';
import { measured } from '../../../core/heatwork/measured.ts';
import { firing, traceFrom, type CurvePoint } from '../../builders/trace.ts';
import { cone6, ramp } from './measuring.ts';

const measure = (points: CurvePoint[], asked: Partial<HeatWorkQuestion> = {}) => {
  const trace = traceFrom(points, { intervalSeconds: 20 });
  return measured(trace, { target: null, legs: trace.summary.legs, ...asked });
};

describe('a measured firing', () => {
  test('is taken as read without witness cones', () => {
    expect(measure(cone6()).errorC).toBe(0);
  });

  test('is corrected by witness cones', () => {
    const asRead = measure(cone6()).standing.position!;
    const observedCones = [{ cone: '7', place: 'middle', bendDegrees: 90 }] as const;
    const corrected = measure(cone6(), { observedCones });
    expect(corrected.errorC).toBeLessThan(-4);
    expect(corrected.standing.position).toBeGreaterThan(asRead + 0.3);
  });

  test('knows a record that starts or ends hot', () => {
    expect(measure(cone6())).toMatchObject({ startsHot: false, endsHot: false });
    const late = firing(1100, ramp(60, 1215), ramp(250, 300));
    expect(measure(late)).toMatchObject({ startsHot: true, endsHot: false });
    const cut = firing(20, ramp(150, 1100), ramp(60, 1215), ramp(250, 1150));
    expect(measure(cut)).toMatchObject({ startsHot: false, endsHot: true });
  });

  test('believes whoever says that the kiln had cooled', () => {
    const cut = firing(20, ramp(150, 1100), ramp(60, 1215));
    expect(measure(cut, { recordEnds: 'while-hot' }).endsHot).toBe(true);
    expect(measure(cut, { recordEnds: 'after-cooling' }).endsHot).toBe(false);
    // While still hot, but long past its heat-work.
    expect(measure(cone6(), { recordEnds: 'while-hot' }).endsHot).toBe(false);
  });
});
