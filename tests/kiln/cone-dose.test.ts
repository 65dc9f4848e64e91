import { describe, expect, it } from 'vitest';
import { CONE_CHART } from './cone-chart.ts';
import { coneKinetics, endPointAt, outcomeOf } from './cone-dose.ts';

/** A climb at a steady rate from 300 °C below, then free fall: a line each 20 s. */
const climb = (endC: number, rateCPerHour: number): [Float64Array, Float64Array] => {
  const seconds = (300 * 3600) / rateCPerHour;
  const count = Math.ceil(seconds / 20);
  const at = Float64Array.from({ length: count + 1 }, (_, i) => (i * seconds) / count);
  return [at, at.map((t) => endC - ((seconds - t) * rateCPerHour) / 3600)];
};

describe('the test kiln’s own cones', () => {
  it('give back the published chart at 15, 60 and 150 °C/h', () => {
    // The cone maker's chart of 2016, self-supporting cones. Such a fit to all three rates was
    // worked out beforehand to leave an RMS of 1.3 °C and at worst 3.8 °C (cone 14).
    let squares = 0;
    for (const [cone, ...ends] of CONE_CHART) {
      [15, 60, 150].forEach((rate, i) => {
        const miss = endPointAt(cone, rate) - ends[i]!;
        squares += miss * miss;
        expect(Math.abs(miss), `cone ${cone} at ${rate}`).toBeLessThan(4);
      });
    }
    expect(Math.sqrt(squares / (CONE_CHART.length * 3))).toBeLessThan(1.4);
  });

  it('have cone 6 at about 700 kJ/mol', () => {
    // Worked out beforehand from the same chart; R = 8.314 J/(mol·K).
    const six = coneKinetics().find(({ cone }) => cone === '6')!;
    expect((six.activationKelvin * 8.314) / 1000).toBeGreaterThan(650);
    expect((six.activationKelvin * 8.314) / 1000).toBeLessThan(750);
  });

  it.each([
    ['04', 1063, -3],
    ['6', 1222, 6],
    ['017', 738, -16],
    ['10', 1285, 10],
  ])('bring down cone %s at its chart end point of %i °C at 60 °C/h', (_cone, endC, position) => {
    const outcome = outcomeOf(...climb(endC, 60));
    expect(Math.abs(outcome.position! - position)).toBeLessThan(0.15);
  });

  it('say which cone is the last down, and bridge samples without a reading', () => {
    const [at, celsius] = climb(1226, 60);
    const broken = celsius.map((value, i) => (i % 50 === 7 ? NaN : value));
    expect(outcomeOf(at, celsius).cone).toBe('6');
    expect(outcomeOf(at, broken).position).toBeCloseTo(outcomeOf(at, celsius).position!, 2);
    expect(outcomeOf(...climb(500, 60))).toEqual({ cone: null, position: null });
  });
});
