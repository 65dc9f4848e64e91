import { expect, test } from 'vitest';
import { isNoReadingCode } from '../../../../core/log/text/no-reading-codes.ts';

test('codes, limits of couple types and of whole numbers are known', () => {
  // 1372 and 1768.1 °C are the ends of types K and S in NIST SRD 60; 32767 is 2^15 − 1; −127 and 85
  // are what a common digital sensor gives when it is cut off and when it starts (common practice).
  for (const code of [-999, 9999, 1372, 1768.1, 32767, -127, 85, 0]) {
    expect(isNoReadingCode(code)).toBe(true);
  }
  expect(isNoReadingCode(1222)).toBe(false);
  expect(isNoReadingCode(20.5)).toBe(false);
});
