import { expect, test } from 'vitest';
import { celsiusIn } from '../../../../core/log/assemble/scale.ts';

test('degrees need no couple, voltages do', () => {
  expect(celsiusIn({ unit: 'F', couple: null }, 212, 0)).toBeCloseTo(100, 9);
  expect(celsiusIn({ unit: 'mV', couple: null }, 41.276, 0)).toBeNaN();
  // NIST SRD 60: type K gives 41.276 mV at 1000 °C.
  const couple = { type: 'K', coldC: 0 } as const;
  expect(celsiusIn({ unit: 'mV', couple }, 41.276, 0)).toBeCloseTo(1000, 1);
});
