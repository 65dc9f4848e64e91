import { describe, expect, it } from 'vitest';
import { findLegs } from '../../../core/trace/legs.ts';
import { localSlopes } from '../../../core/trace/slopes.ts';
import { seededRandom } from '../../builders/random.ts';
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

  it.each([41, 62, 83])('keep a short hold at its place in days of record: %i min', (lead) => {
    // Every minute for 60 hours: 100 °C/h to 1222 °C, a quarter of an hour there, free cooling.
    const arrived = lead + (1222 - 20) / (100 / 60);
    const kilnC = (minutes: number): number => {
      if (minutes <= arrived) return 20 + (Math.max(0, minutes - lead) * 100) / 60;
      return 20 + 1202 * Math.exp(-Math.max(0, minutes - arrived - 15) / 1000);
    };
    const random = seededRandom(lead);
    const atSeconds = Float64Array.from({ length: 3600 }, (_, minute) => 60 * minute);
    const celsius = atSeconds.map((at) => kilnC(at / 60) + random.between(-0.5, 0.5));
    const slopes = localSlopes(atSeconds, celsius, 0.3, 60);
    const legs = findLegs({ atSeconds, celsius, noiseC: 0.3, ...slopes });
    const climb = legs.find((leg) => leg.kind === 'ramp');
    expect(Math.abs(climb!.endSeconds / 60 - arrived)).toBeLessThan(1);
    expect(Math.abs(climb!.endC - 1222)).toBeLessThan(1);
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
