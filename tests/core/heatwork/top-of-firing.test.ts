import { describe, expect, test } from 'vitest';
import { topOfFiring } from '../../../core/heatwork/top-of-firing.ts';
import { firing, traceFrom } from '../../builders/trace.ts';
import { hold, ramp } from './measuring.ts';

const topOf = (...args: Parameters<typeof traceFrom>) => {
  const trace = traceFrom(...args);
  return topOfFiring(trace, trace.summary.legs);
};

describe('the end of the climb', () => {
  test('without a hold is the top, with the rate of its last 100 °C', () => {
    const top = topOf(firing(20, ramp(150, 1000), ramp(60, 1200), ramp(200, 300)));
    expect(top.topC).toBeCloseTo(1200, 0);
    expect(top.rampEndC).toBeCloseTo(1200, 0);
    expect(top.rampFromC).toBeCloseTo(1100, 0);
    expect(top.rampRateCPerHour).toBeCloseTo(60, 3);
    expect(top.hold).toBeNull();
  });

  test('is the hold’s start where there is one, noise in the hold or not', () => {
    const points = firing(20, ramp(100, 1200), hold(30), ramp(200, 300));
    const top = topOf(points, { noiseC: 1.2 });
    expect(top.rampEndSeconds).toBe(11.8 * 3600);
    expect(top.rampRateCPerHour).toBeCloseTo(100, 3);
    expect(top.hold!.meanC).toBeCloseTo(1200, 6);
    expect((top.hold!.endSeconds - top.hold!.startSeconds) / 60).toBeCloseTo(30, 6);
  });

  test('leaves a hold on the way up to the climb', () => {
    const top = topOf(firing(20, ramp(100, 1150), hold(60), ramp(100, 1200), ramp(200, 300)));
    expect(top.hold).toBeNull();
    // 100 °C in an hour of climb and an hour of hold.
    expect(top.rampRateCPerHour).toBeCloseTo(50, 1);
  });

  test('finds the climb before a drop to a soak just under the top', () => {
    const top = topOf(firing(20, ramp(100, 1200), ramp(200, 1185), hold(30), ramp(200, 300)));
    expect(top.rampEndC).toBeCloseTo(1200, 0);
    expect(top.hold!.meanC).toBeCloseTo(1185, 0);
  });

  test('knows no rate where the record begins near the top', () => {
    expect(topOf(firing(1190, ramp(60, 1200), ramp(200, 300))).rampRateCPerHour).toBeNull();
    // 60 °C are enough for one.
    expect(topOf(firing(1140, ramp(60, 1200), ramp(200, 300))).rampRateCPerHour).toBeCloseTo(60, 3);
  });
});
