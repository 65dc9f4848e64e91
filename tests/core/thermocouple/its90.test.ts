import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { COUPLE_TYPES, type CoupleType } from '../../../core/model/options.ts';
import { ITS90_CHECK_VALUES } from '../../../core/reference/its90-check-values.ts';
import {
  celsiusOfEmf,
  coupleRange,
  emfMillivolts,
  seebeckMillivoltsPerK,
  TYPE_B_TURN_C,
} from '../../../core/thermocouple/its90.ts';
import { againstShared } from '../reference/shared-reference.ts';

/** The tables are printed to 0.001 mV; half a digit, and the last of the coefficients' digits. */
const HALF_DIGIT_MILLIVOLTS = 0.00051;

describe.each(COUPLE_TYPES)('type %s', (type) => {
  const { fromC, toC } = coupleRange(type);

  // Source: NIST SRD 60, the reference tables (core/reference/its90-check-values.ts).
  it('gives the printed EMF, and the printed temperature within what its digits leave open', () => {
    const printed = ITS90_CHECK_VALUES[type];
    expect(printed.length).toBeGreaterThan(5);
    for (const [atC, millivolts] of printed) {
      expect(Math.abs(emfMillivolts(type, atC) - millivolts)).toBeLessThan(HALF_DIGIT_MILLIVOLTS);
      const open = HALF_DIGIT_MILLIVOLTS / seebeckMillivoltsPerK(type, atC);
      expect(Math.abs(celsiusOfEmf(type, millivolts) - atC)).toBeLessThan(1.1 * open);
    }
  });

  it('comes back from millivolts to the same temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: fromC, max: toC, noNaN: true }), (atC) => {
        const back = celsiusOfEmf(type, emfMillivolts(type, atC));
        // At its turn the slope of type B is zero.
        const near = type === 'B' && atC < TYPE_B_TURN_C + 0.5 ? 0.5 : 0.005;
        return Math.abs(back - atC) < near;
      }),
      { numRuns: 1000 },
    );
  });

  it('rises over its whole range, and its slope is that of its EMF', () => {
    for (let atC = fromC + 1; atC < toC - 1; atC += 7.3) {
      const rise = emfMillivolts(type, atC + 0.01) - emfMillivolts(type, atC - 0.01);
      expect(rise).toBeGreaterThan(0);
      expect(seebeckMillivoltsPerK(type, atC)).toBeCloseTo(rise / 0.02, 5);
    }
  });

  it('is no number beyond its range', () => {
    expect(celsiusOfEmf(type, emfMillivolts(type, toC) + 0.01)).toBeNaN();
    expect(celsiusOfEmf(type, emfMillivolts(type, fromC) - 0.01)).toBeNaN();
    expect(celsiusOfEmf(type, Number.NaN)).toBeNaN();
    expect(emfMillivolts(type, toC + 1)).toBeNaN();
    expect(seebeckMillivoltsPerK(type, Number.NaN)).toBeNaN();
  });
});

describe('type B at its low end', () => {
  it('turns where its slope is zero', () => {
    expect(Math.abs(seebeckMillivoltsPerK('B', TYPE_B_TURN_C))).toBeLessThan(1e-9);
    expect(emfMillivolts('B', TYPE_B_TURN_C)).toBeLessThan(0);
  });

  // Source: NIST SRD 60, type B: 0.000 mV at 0 °C and again at 42 °C.
  test('reads nothing as the warmer of its two temperatures', () => {
    expect(celsiusOfEmf('B', 0)).toBeGreaterThan(41);
    expect(celsiusOfEmf('B', 0)).toBeLessThan(43);
  });
});

againstShared('agrees with every row of the copy', 'thermocouple_check.csv', (text) => {
  const rows = text.trim().split('\n').slice(1);
  expect(rows.length).toBeGreaterThan(90);
  for (const row of rows) {
    const [type, atC, millivolts] = row.split(',');
    const off = emfMillivolts(type as CoupleType, Number(atC)) - Number(millivolts);
    expect(Math.abs(off), row).toBeLessThan(HALF_DIGIT_MILLIVOLTS);
  }
});
