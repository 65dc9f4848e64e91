import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endPoint, GAS_CONSTANT_KJ } from '../../../core/cones/arrhenius.ts';
import { fitArrhenius, fitThreshold } from '../../../core/cones/fit-arrhenius.ts';
import { celsiusPerHour } from '../../../core/units.ts';

const cells = (...pairs: [number, number][]) =>
  pairs.map(([rateCPerHour, endPointC]) => ({ rateCPerHour, endPointC }));

const squares = (residualsC: readonly number[]): number =>
  residualsC.reduce((sum, residual) => sum + residual ** 2, 0);

describe('the fit to charted end points', () => {
  test('passes through two rates', () => {
    const { residualsC } = fitArrhenius(cells([60, 1222], [150, 1243]));
    for (const residual of residualsC) expect(Math.abs(residual)).toBeLessThan(1e-6);
  });

  test('finds the constants that made the end points', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 28_000, max: 190_000, noNaN: true }),
        fc.double({ min: 900, max: 1650, noNaN: true }),
        fc.double({ min: -2, max: 1, noNaN: true }),
        (activationK, referenceK, lnThresholdHours) => {
          const truth = { activationK, referenceK, lnThresholdHours };
          const made = [15, 60, 150].map((rate) => ({
            rateCPerHour: rate,
            endPointC: endPoint(truth, celsiusPerHour(rate)),
          }));
          const { kinetics } = fitArrhenius(made);
          expect(kinetics.activationK / activationK).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test('is the least: no nearby E with its own best threshold does better', () => {
    const cone6 = cells([15, 1185], [60, 1222], [150, 1243]);
    const { kinetics, residualsC } = fitArrhenius(cone6);
    for (const factor of [0.97, 0.99, 1.01, 1.03]) {
      const nearby = fitThreshold(kinetics.activationK * factor, cone6);
      expect(squares(nearby.residualsC)).toBeGreaterThan(squares(residualsC));
    }
  });

  test('gives cone 6 about 700 kJ/mol (reference notes)', () => {
    const { kinetics } = fitArrhenius(cells([15, 1185], [60, 1222], [150, 1243]));
    expect(Math.abs(kinetics.activationK * GAS_CONSTANT_KJ - 700)).toBeLessThan(10);
  });

  test('recovers 119.9 kJ/mol from the peaks of the reference notes’ synthetic reaction', () => {
    const peaks = fitArrhenius(
      cells(
        ...[
          [30, 71.63],
          [60, 77.16],
          [120, 82.88],
          [300, 90.72],
          [600, 96.87],
          [1200, 103.24],
          [3000, 111.99],
        ].map(([rate, peak]): [number, number] => [rate!, peak!]),
      ),
    );
    expect(Math.abs(peaks.kinetics.activationK * GAS_CONSTANT_KJ - 119.9)).toBeLessThan(0.5);
  });

  test('refuses one rate', () => {
    expect(() => fitArrhenius(cells([150, 1222]))).toThrow(RangeError);
  });
});

describe('the threshold for a lent activation energy', () => {
  test('meets a single charted end point exactly', () => {
    const { residualsC } = fitThreshold(84_000, cells([300, 1255]));
    expect(Math.abs(residualsC[0]!)).toBeLessThan(1e-6);
  });
});
