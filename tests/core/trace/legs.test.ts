import { describe, expect, it } from 'vitest';
import { findLegs } from '../../../core/trace/legs.ts';
import { localSlopes } from '../../../core/trace/slopes.ts';
import { firing, traceFrom, type Stretch } from '../../builders/trace.ts';

const legsOf = (stretches: readonly Stretch[], noiseC = 0.5) => {
  const { atSeconds, celsius } = traceFrom(firing(20, ...stretches), {
    noiseC,
    intervalSeconds: 30,
  });
  return findLegs({ atSeconds, celsius, noiseC, ...localSlopes(atSeconds, celsius, noiseC, 30) });
};

describe("the trace's own legs", () => {
  const stretches: Stretch[] = [
    { rateCPerHour: 100, toC: 120 },
    { holdMinutes: 60 },
    { rateCPerHour: 180, toC: 1100 },
    { rateCPerHour: 60, toC: 1220 },
    { holdMinutes: 20 },
    { rateCPerHour: 300, toC: 1000 },
    { rateCPerHour: 70, toC: 760 },
  ];

  it('are the firing that made it: kind, moment and rate', () => {
    const legs = legsOf(stretches);
    expect(legs.map((leg) => leg.kind)).toEqual([
      'ramp',
      'hold',
      'ramp',
      'ramp',
      'hold',
      'cooling',
      'cooling',
    ]);
    const ends = firing(20, ...stretches)
      .slice(1)
      .map(([minutes]) => 60 * minutes);
    legs.forEach((leg, k) => {
      expect(Math.abs(leg.endSeconds - ends[k]!)).toBeLessThan(180);
    });
    expect(legs[2]!.rateCPerHour).toBeCloseTo(180, -1);
    expect(legs[3]!.endC).toBeCloseTo(1220, -0.5);
  });

  it('keep a short hold at its place in a record of days', () => {
    const peak: Stretch[] = [{ rateCPerHour: 100, toC: 1222 }, { holdMinutes: 15 }];
    const [climb, hold] = legsOf([
      ...peak,
      { rateCPerHour: 45, toC: 80 },
      { rateCPerHour: 3, toC: 20 },
      { holdMinutes: 600 },
    ]);
    expect(climb?.kind).toBe('ramp');
    expect(Math.abs(climb!.endSeconds - 12.02 * 3600)).toBeLessThan(180);
    expect(hold?.kind).toBe('hold');
    expect(Math.abs(hold!.endSeconds - 12.27 * 3600)).toBeLessThan(180);
  });

  it('leave no time out and overlap nowhere', () => {
    const legs = legsOf(stretches, 1.2);
    legs.slice(1).forEach((leg, k) => {
      expect(leg.startSeconds).toBe(legs[k]!.endSeconds);
    });
    expect(legs[0]!.startSeconds).toBe(0);
  });

  it('of a single reading are none', () => {
    const one = Float64Array.of(20);
    expect(
      findLegs({
        atSeconds: Float64Array.of(0),
        celsius: one,
        noiseC: 0,
        ...localSlopes(one, one, 0, 60),
      }),
    ).toEqual([]);
  });
});
