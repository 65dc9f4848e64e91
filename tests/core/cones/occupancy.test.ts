import fc from 'fast-check';
import { lastAtOrBefore } from '../../../core/numeric/search.ts';
import { describe, expect, test } from 'vitest';
import { doseOfSegment, type Arrhenius } from '../../../core/cones/arrhenius.ts';
import { coneKinetics, kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import {
  doseOf,
  joined,
  movedTo,
  occupancyOf,
  temperatureAt,
  type PiecewiseCurve,
} from '../../../core/cones/occupancy.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

/** The dose by the closed form of every segment, without bins. */
const exactDose = (kinetics: Arrhenius, { atSeconds, celsius }: PiecewiseCurve): number => {
  let dose = 0;
  for (let i = 1; i < atSeconds.length; i += 1) {
    const hours = (atSeconds[i]! - atSeconds[i - 1]!) / 3600;
    dose += doseOfSegment(kinetics, celsius[i - 1]!, celsius[i]!, hours);
  }
  return dose;
};

const cone6 = firing(
  20,
  { rateCPerHour: 150, toC: 1100 },
  { rateCPerHour: 60, toC: 1215 },
  { holdMinutes: 15 },
  { rateCPerHour: 250, toC: 400 },
);

describe('the dose from hours at temperature', () => {
  test('is that of the closed form within 1e-4 for every cone near the result', () => {
    const curve = traceFrom(cone6, { noiseC: 1, resolutionC: 1 });
    const occupancy = occupancyOf(curve);
    for (const kinetics of coneKinetics('self-supporting').slice(20)) {
      const exact = exactDose(kinetics, curve);
      expect(Math.abs(doseOf(kinetics, occupancy) / exact - 1)).toBeLessThan(1e-4);
    }
  });

  test('is that of the closed form for any curve', () => {
    const kinetics = kineticsOf('self-supporting', '6');
    const corners = fc.array(
      fc.tuple(
        fc.double({ min: 1, max: 7200, noNaN: true }),
        fc.double({ min: 700, max: 1280, noNaN: true }),
      ),
      { minLength: 2, maxLength: 30 },
    );
    fc.assert(
      fc.property(corners, (steps) => {
        let at = 0;
        const curve = {
          atSeconds: Float64Array.from(steps, ([seconds]) => (at += seconds)),
          celsius: Float64Array.from(steps, ([, reading]) => reading),
        };
        const exact = exactDose(kinetics, curve);
        expect(Math.abs(doseOf(kinetics, occupancyOf(curve)) - exact)).toBeLessThan(5e-4 * exact);
      }),
    );
  });

  test('does not depend on the sampling, from 10 s to 30 min, where the corners are sampled', () => {
    // Corners on the half hour: every sampling below meets them all.
    const corners = [
      [0, 20],
      [480, 1100],
      [600, 1220],
      [630, 1220],
      [840, 600],
    ] as const;
    const kinetics = kineticsOf('self-supporting', '6');
    const doses = [10, 30, 60, 300, 600, 1800].map((intervalSeconds) =>
      doseOf(kinetics, occupancyOf(traceFrom(corners, { intervalSeconds }))),
    );
    for (const dose of doses) expect(dose / doses[0]!).toBeCloseTo(1, 4);
  });

  test('converges on a curved firing as the square of the interval', () => {
    const curved = (intervalSeconds: number): PiecewiseCurve => {
      const atSeconds = Float64Array.from(
        { length: Math.round(36_000 / intervalSeconds) + 1 },
        (_, i) => i * intervalSeconds,
      );
      const celsius = atSeconds.map((at) => 1220 - 1200 * ((at - 18_000) / 18_000) ** 2);
      return { atSeconds, celsius };
    };
    const kinetics = kineticsOf('self-supporting', '6');
    const dose = (interval: number) => doseOf(kinetics, occupancyOf(curved(interval)));
    const fine = dose(1);
    expect(Math.abs(dose(10) / fine - 1)).toBeLessThan(1e-4);
    expect(Math.abs(dose(60) / fine - 1)).toBeLessThan(1e-3);
    const [at300, at600] = [dose(300) / fine - 1, dose(600) / fine - 1];
    expect(at600 / at300).toBeGreaterThan(3);
    expect(at600 / at300).toBeLessThan(5);
  });

  test('adds up over parts that begin and end between samples', () => {
    const curve = traceFrom(cone6, { intervalSeconds: 97 });
    const kinetics = kineticsOf('self-supporting', '6');
    const whole = doseOf(kinetics, occupancyOf(curve));
    const cuts = [-Infinity, 20_000.5, 32_333, 33_333.3, Infinity];
    const parts = cuts.slice(1).map((to, i) => occupancyOf(curve, cuts[i], to));
    expect(parts.reduce((sum, part) => sum + doseOf(kinetics, part), 0) / whole).toBeCloseTo(1, 5);
    expect(doseOf(kinetics, joined(...parts)) / whole).toBeCloseTo(1, 5);
  });

  test('is the dose of the moved curve when the hours are moved', () => {
    const curve = traceFrom(cone6);
    const kinetics = kineticsOf('self-supporting', '6');
    const hotter = (atC: number) => atC * 1.005 + 2;
    const moved = doseOf(kinetics, movedTo(occupancyOf(curve), hotter));
    const exact = exactDose(kinetics, { ...curve, celsius: curve.celsius.map(hotter) });
    expect(moved / exact).toBeCloseTo(1, 4);
  });

  test('of nothing is nothing', () => {
    const curve = traceFrom(cone6);
    const past = occupancyOf(curve, curve.summary.durationSeconds + 10);
    expect(past.hours).toHaveLength(0);
    expect(doseOf(kineticsOf('self-supporting', '6'), past)).toBe(0);
  });
});

describe('looking up a moment', () => {
  const curve = { atSeconds: Float64Array.of(0, 10, 20), celsius: Float64Array.of(5, 25, 25) };

  test('finds the last sample at or before it', () => {
    expect([-1, 0, 9, 10, 25].map((at) => lastAtOrBefore(curve.atSeconds, at))).toEqual([
      -1, 0, 0, 1, 2,
    ]);
  });

  test('reads between samples, and level beyond the ends', () => {
    expect([-5, 5, 10, 99].map((at) => temperatureAt(curve, at))).toEqual([5, 15, 25, 25]);
  });
});

describe('two records as one curve', () => {
  const [first, second] = [traceFrom(cone6), traceFrom(cone6)];
  const laterSeconds = first.summary.durationSeconds + 7200;
  const curve: PiecewiseCurve = {
    atSeconds: Float64Array.from([
      ...first.atSeconds,
      ...second.atSeconds.map((at) => at + laterSeconds),
    ]),
    celsius: Float64Array.from([...first.celsius, ...second.celsius]),
    joinedAt: first.celsius.length,
  };
  const hours = (occupancy: ReturnType<typeof occupancyOf>) =>
    occupancy.hours.reduce((sum, share) => sum + share, 0);

  test('hold the hours of both and none of the time between them', () => {
    expect(hours(occupancyOf(curve))).toBeCloseTo(2 * hours(occupancyOf(first)), 9);
    const drawn = { atSeconds: curve.atSeconds, celsius: curve.celsius.map(() => 1000) };
    expect(
      hours(occupancyOf(drawn)) - hours(occupancyOf({ ...drawn, joinedAt: curve.joinedAt! })),
    ).toBeCloseTo(2, 9);
  });

  test('count nothing of a stretch that ends between them', () => {
    const flat = { ...curve, celsius: curve.celsius.map(() => 1000) };
    const end = first.summary.durationSeconds;
    expect(hours(occupancyOf(flat, 0, end + 3600))).toBeCloseTo(end / 3600, 9);
    expect(hours(occupancyOf(flat, end + 1, end + 3600))).toBe(0);
  });
});
