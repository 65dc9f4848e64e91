import { describe, expect, test } from 'vitest';
import { measured } from '../../../core/heatwork/measured.ts';
import { coneOfInterest, targetOf } from '../../../core/heatwork/target.ts';
import type { Cone } from '../../../core/model/cone.ts';
import { firing, traceFrom, type CurvePoint } from '../../builders/trace.ts';
import { cone6, ramp } from './measuring.ts';

const allOf = (points: CurvePoint[]) => {
  const trace = traceFrom(points, { intervalSeconds: 20 });
  return measured(trace, { target: null, legs: trace.summary.legs });
};

const verdictOf = (points: CurvePoint[], cone: Cone) => targetOf(allOf(points), cone)!.verdict;

describe('the cone that was meant', () => {
  test('is reached within half a cone (common practice), else missed or passed', () => {
    const fired = cone6(1210);
    const { position } = allOf(fired).standing;
    expect(position).toBeGreaterThan(5.5);
    expect(position).toBeLessThan(6.5);
    expect(verdictOf(fired, '6')).toBe('within');
    expect(verdictOf(fired, '5')).toBe('over');
    expect(verdictOf(fired, '7')).toBe('under');
  });

  test('is missed by a firing that reached no cone', () => {
    const target = targetOf(allOf(firing(20, ramp(100, 450), ramp(100, 50))), '022')!;
    expect(target.verdict).toBe('under');
    expect(target.marginC).toBeLessThan(-90);
  });

  test('is passed by a firing far beyond the hottest cone, though the position ends there', () => {
    expect(verdictOf(firing(20, ramp(60, 1370), ramp(250, 300)), '14')).toBe('within');
    expect(verdictOf(firing(20, ramp(60, 1450), ramp(250, 300)), '14')).toBe('over');
  });

  test('without one is no target, and the nearest cone is of interest', () => {
    const all = allOf(cone6(1210));
    expect(targetOf(all, null)).toBeNull();
    expect(coneOfInterest(all, null).cone).toBe('6');
    expect(coneOfInterest(all, '9').cone).toBe('9');
    const cold = allOf(firing(20, ramp(100, 450), ramp(100, 50)));
    expect(coneOfInterest(cold, null).cone).toBe('022');
  });
});
