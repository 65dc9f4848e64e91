import { expect, test } from 'vitest';
import { isPeakShort, peakToleranceC, shortOfPeakC } from '../../../core/findings/short-peak.ts';
import { celsius, celsiusDelta } from '../../../core/units.ts';
import { facts } from '../../builders/facts.ts';

const { schedule } = facts();
const peak = (peakC: number, noiseC = 0.5, resolutionC = 0.1) => ({
  peakC: celsius(peakC),
  noiseC: celsiusDelta(noiseC),
  resolutionC: celsiusDelta(resolutionC),
});

// The schedule's top is 1215 °C.
test.each([
  [1210, false],
  [1209.9, true],
  [1230, false],
])('a peak of %d °C is short: %s', (peakC, isShort) => {
  expect(isPeakShort(schedule!, peak(peakC))).toBe(isShort);
});

test('what the readings cannot show is not short', () => {
  expect(shortOfPeakC(schedule!, peak(1205))).toBe(10);
  expect(peakToleranceC(peak(1205, 4))).toBe(12);
  expect(peakToleranceC(peak(1205, 0.5, 10))).toBe(10);
});
