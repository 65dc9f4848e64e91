import { describe, expect, test } from 'vitest';
import { celsiusOfVoltage } from '../../../../core/log/assemble/couple.ts';

// Voltages from NIST SRD 60, type K: 1.000 mV at 25 °C, 41.276 mV at 1000 °C.
describe('a voltage of type K', () => {
  test('counts from 0 °C where the cold end is allowed for', () => {
    const celsius = celsiusOfVoltage(41.276, 'mV', { type: 'K', coldC: 0 }, 0);
    expect(celsius).toBeCloseTo(1000, 1);
  });

  test('counts from the cold end else, row by row', () => {
    const couple = { type: 'K', coldC: Float64Array.of(0, 25) } as const;
    expect(celsiusOfVoltage(40.276, 'mV', couple, 1)).toBeCloseTo(1000, 1);
    expect(celsiusOfVoltage(40_276, 'uV', { type: 'K', coldC: 25 }, 0)).toBeCloseTo(1000, 1);
  });

  test('is no number beyond what the couple gives', () => {
    expect(celsiusOfVoltage(99.99, 'mV', { type: 'K', coldC: 25 }, 0)).toBeNaN();
    expect(celsiusOfVoltage(Number.NaN, 'mV', { type: 'K', coldC: 25 }, 0)).toBeNaN();
  });
});

test('noise below the least voltage of type B is a cool kiln; more is none', () => {
  expect(celsiusOfVoltage(-0.01, 'mV', { type: 'B', coldC: 0 }, 0)).toBeCloseTo(21, 0);
  expect(celsiusOfVoltage(-0.1, 'mV', { type: 'B', coldC: 0 }, 0)).toBeNaN();
});
