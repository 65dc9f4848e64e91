import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { localSlopes } from '../../../core/trace/slopes.ts';
import { seededRandom } from '../../builders/random.ts';

const irregularTimes = (count: number): Float64Array => {
  const random = seededRandom(7);
  let at = 0;
  return Float64Array.from({ length: count }, () => (at += 5 + 50 * random.uniform()));
};

describe('local slopes', () => {
  it('are exact on a straight climb at irregular times, ends included', () => {
    const atSeconds = irregularTimes(500);
    const celsius = atSeconds.map((at) => 20 + (150 * at) / 3600);
    const { slopeCPerHour, smoothC } = localSlopes(atSeconds, celsius, 0.5, 30);
    for (let i = 0; i < 500; i++) {
      expect(slopeCPerHour[i]).toBeCloseTo(150, 6);
      expect(smoothC[i]).toBeCloseTo(celsius[i]!, 8);
    }
  });

  it('agree with simple-statistics over the window of a sample', () => {
    const random = seededRandom(3);
    const atSeconds = Float64Array.from({ length: 400 }, (_, i) => 60 * i);
    const celsius = atSeconds.map((at) => 900 - at / 40 + (at / 5000) ** 2 + random.normal());
    const { slopeCPerHour } = localSlopes(atSeconds, celsius, 0, 60);
    // Noise 0 asks for the narrowest window: 300 s, so the two samples on either side.
    for (const i of [50, 173, 320]) {
      const window = [i - 2, i - 1, i, i + 1, i + 2].map((k) => [
        atSeconds[k]! / 3600,
        celsius[k]!,
      ]);
      expect(slopeCPerHour[i]).toBeCloseTo(linearRegression(window).m, 6);
    }
  });

  it('come with an error that the departures from the truth keep to', () => {
    const random = seededRandom(11);
    const atSeconds = Float64Array.from({ length: 4000 }, (_, i) => 30 * i);
    const celsius = atSeconds.map((at) => 20 + (60 * at) / 3600 + 0.8 * random.normal());
    const { slopeCPerHour, slopeErrorCPerHour } = localSlopes(atSeconds, celsius, 0.8, 30);
    const within = slopeCPerHour.filter(
      (slope, i) => Math.abs(slope - 60) < slopeErrorCPerHour[i]!,
    );
    // One standard error holds 68 % of normal departures.
    expect(within.length / 4000).toBeGreaterThan(0.6);
    expect(within.length / 4000).toBeLessThan(0.78);
  });

  it('lose no digits on a million samples', () => {
    const atSeconds = Float64Array.from({ length: 1_000_000 }, (_, i) => i);
    const celsius = atSeconds.map((at) => 20 + (100 * at) / 3600);
    const { slopeCPerHour } = localSlopes(atSeconds, celsius, 0.3, 1);
    expect(slopeCPerHour[999_000]).toBeCloseTo(100, 6);
  });

  it('of two samples are the line between them', () => {
    const { slopeCPerHour } = localSlopes(
      Float64Array.of(0, 3600),
      Float64Array.of(20, 120),
      0,
      3600,
    );
    expect([...slopeCPerHour]).toEqual([100, 100]);
  });

  it('smooth nothing where a few readings were taken by hand, and go to the neighbours', () => {
    const hours = [0, 2.5, 6, 9.5];
    const celsius = Float64Array.from([20, 300, 900, 1222]);
    const atSeconds = Float64Array.from(hours, (at) => at * 3600);
    const { smoothC, slopeCPerHour } = localSlopes(atSeconds, celsius, 0, 3.5 * 3600);
    expect([...smoothC]).toEqual([...celsius]);
    expect(slopeCPerHour[0]).toBeCloseTo(280 / 2.5, 6);
    expect(slopeCPerHour[3]).toBeCloseTo(322 / 3.5, 6);
    const middle = linearRegression(hours.slice(1).map((at, i) => [at, celsius[i + 1]!]));
    expect(slopeCPerHour[2]).toBeCloseTo(middle.m, 6);
  });
});
