import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  doseOfClimb,
  doseOfSegment,
  doseRate,
  endPoint,
  GAS_CONSTANT_KJ,
  type Arrhenius,
} from '../../../core/cones/arrhenius.ts';
import { celsius, celsiusPerHour } from '../../../core/units.ts';

const cone: Arrhenius = { activationK: 85_000, referenceK: 1495, lnThresholdHours: -0.8 };

/** Simpson's rule over a straight segment, by steps fine enough to be exact here. */
const bySimpson = (kinetics: Arrhenius, fromC: number, toC: number, hours: number): number => {
  const panels = 4000;
  let sum = 0;
  for (let i = 0; i <= panels; i += 1) {
    const weight = i === 0 || i === panels ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * doseRate(kinetics, fromC + ((toC - fromC) * i) / panels);
  }
  return (hours * sum) / panels / 3;
};

const anyKinetics = fc.record({
  activationK: fc.double({ min: 25_000, max: 200_000, noNaN: true }),
  referenceK: fc.double({ min: 850, max: 1650, noNaN: true }),
  lnThresholdHours: fc.double({ min: -3, max: 2, noNaN: true }),
});

describe('the dose of a straight segment', () => {
  test.each([
    [600, 1222, 10.4],
    [1222, 1180, 0.1],
    [1222, 1222.01, 3],
    [1222, 1222, 0.25],
  ])('from %d to %d °C is that of a fine sum', (fromC, toC, hours) => {
    const exact = doseOfSegment(cone, fromC, toC, hours);
    expect(exact / bySimpson(cone, fromC, toC, hours)).toBeCloseTo(1, 7);
  });

  test('does not change when the segment is cut, or walked the other way', () => {
    fc.assert(
      fc.property(
        anyKinetics,
        fc.double({ min: 20, max: 1300, noNaN: true }),
        fc.double({ min: 20, max: 1300, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (kinetics, fromC, toC, share) => {
          const cutC = fromC + share * (toC - fromC);
          const whole = doseOfSegment(kinetics, fromC, toC, 2);
          const parts =
            doseOfSegment(kinetics, fromC, cutC, 2 * share) +
            doseOfSegment(kinetics, cutC, toC, 2 * (1 - share));
          expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-7 * whole + 1e-300);
          const back = doseOfSegment(kinetics, toC, fromC, 2);
          expect(Math.abs(back - whole)).toBeLessThanOrEqual(1e-12 * whole + 1e-300);
        },
      ),
    );
  });
});

describe('the end point of a constant climb', () => {
  test('is where the climb from cold has given the dose', () => {
    fc.assert(
      fc.property(
        anyKinetics,
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
        (kinetics, rate, dose) => {
          const end = endPoint(kinetics, celsiusPerHour(rate), dose);
          expect(doseOfClimb(kinetics, end, celsiusPerHour(rate)) / dose).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test('rises with the rate', () => {
    const slow = endPoint(cone, celsiusPerHour(15));
    expect(endPoint(cone, celsiusPerHour(60))).toBeGreaterThan(slow);
  });

  test('needs no climb from cold: the last 600 °C hold all but a millionth of the dose', () => {
    const rate = celsiusPerHour(60);
    const last = doseOfSegment(cone, 622, 1222, 10);
    expect(last / doseOfClimb(cone, celsius(1222), rate)).toBeCloseTo(1, 6);
  });
});

describe('a published check: peaks of a synthetic Johnson–Mehl–Avrami reaction', () => {
  // Reference notes, worked examples: n 2, A = e³⁵ per second, E 120 kJ/mol, heated at 0.5 to
  // 50 K/min, peaks at these temperatures, printed to a hundredth.
  const RATES_K_PER_MINUTE = [0.5, 1, 2, 5, 10, 20, 50];
  const PEAKS_C = [71.63, 77.16, 82.88, 90.72, 96.87, 103.24, 111.99];
  const reaction: Arrhenius = {
    activationK: 120 / GAS_CONSTANT_KJ,
    referenceK: 360,
    // One hour of dose at T₀ is 3600·A·exp(−E/RT₀) of the reaction's own ∫k dt.
    lnThresholdHours: -(Math.log(3600) + 35 - 120 / GAS_CONSTANT_KJ / 360),
  };

  /** dα/dt for α = 1 − exp(−y²), y the dose of the climb. */
  const speed = (atC: number, rateCPerHour: number): number => {
    const y = doseOfClimb(reaction, celsius(atC), celsiusPerHour(rateCPerHour));
    return 2 * y * Math.exp(-(y ** 2)) * doseRate(reaction, atC);
  };

  const peakOf = (rateCPerHour: number): number => {
    let [low, high] = [40, 160];
    while (high - low > 1e-6) {
      const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
      if (speed(left, rateCPerHour) < speed(right, rateCPerHour)) low = left;
      else high = right;
    }
    return (low + high) / 2;
  };

  test.each(RATES_K_PER_MINUTE.map((rate, i) => [rate, PEAKS_C[i]!]))(
    'at %d K/min is at %d °C',
    (rate, peakC) => {
      expect(Math.abs(peakOf(rate * 60) - peakC)).toBeLessThan(0.01);
    },
  );

  test('give 119.9 kJ/mol by Kissinger’s line', () => {
    const points = RATES_K_PER_MINUTE.map((rate) => {
      const kelvin = peakOf(rate * 60) + 273.15;
      return [1 / kelvin, Math.log(rate / kelvin ** 2)] as const;
    });
    const centre = points.reduce((sum, [x]) => sum + x, 0) / points.length;
    const rise = points.reduce((sum, [x, y]) => sum + (x - centre) * y, 0);
    const run = points.reduce((sum, [x]) => sum + (x - centre) ** 2, 0);
    expect((-rise / run) * GAS_CONSTANT_KJ).toBeCloseTo(119.9, 1);
  });
});
