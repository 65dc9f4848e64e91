import { describe, expect, test } from 'vitest';
import { chartScatterC } from '../../../core/cones/cone-kinetics.ts';
import { dosesWith, holdDoses } from '../../../core/heatwork/firing-record.ts';
import { modelSpread } from '../../../core/heatwork/model-spread.ts';
import type { ConeType } from '../../../core/model/cone.ts';
import { firing, type CurvePoint } from '../../builders/trace.ts';
import { cone6, ramp, record } from './measuring.ts';

const spreadOf = (points: CurvePoint[], coneType: ConeType = 'self-supporting') => {
  const fired = record(points, { coneType });
  return modelSpread({
    coneType,
    cones: fired.cones,
    doses: dosesWith(fired, 0),
    holdDoses: holdDoses(fired),
    rateCPerHour: fired.top.rampRateCPerHour,
  });
};

const steady = (rate: number): CurvePoint[] => firing(20, ramp(rate, 1215), ramp(250, 300));

describe('the spread besides the couple', () => {
  test('of a plain climb within the chart’s rates is the chart’s scatter', () => {
    for (const rate of [15, 60, 150]) {
      const { sigmaC, leastCones, outsideChart, holdsAdded } = spreadOf(steady(rate));
      expect(sigmaC).toBeGreaterThanOrEqual(chartScatterC());
      expect(sigmaC).toBeLessThan(3);
      expect([leastCones, outsideChart, holdsAdded]).toEqual([0, false, false]);
    }
  });

  test('grows by about 5 °C for each factor e outside them', () => {
    const fast = spreadOf(steady(300));
    expect(fast.outsideChart).toBe(true);
    expect(fast.sigmaC).toBeCloseTo(Math.hypot(spreadOf(steady(150)).sigmaC, 5 * Math.LN2), 0);
    expect(spreadOf(steady(7)).sigmaC).toBeGreaterThan(4);
  });

  test('takes a one-rate chart at its rate', () => {
    expect(spreadOf(steady(150), 'large').outsideChart).toBe(false);
    expect(spreadOf(steady(60), 'large').outsideChart).toBe(true);
  });

  test('after a hold is at least half of what it added, half a cone at most and after half a cone', () => {
    const short = spreadOf(cone6(1215, 5));
    expect(short.holdsAdded).toBe(true);
    expect(short.leastCones).toBeGreaterThan(0.1);
    expect(short.leastCones).toBeLessThan(0.2);
    expect(spreadOf(cone6(1215, 20)).leastCones).toBe(0.5);
    expect(spreadOf(cone6(1215, 240)).leastCones).toBe(0.5);
  });
});
