import { expect, test } from 'vitest';
import { usualTime } from '../../../core/history/usual-time.ts';
import { celsius, seconds } from '../../../core/units.ts';
import { entry } from '../../builders/histories.ts';

const taking = (hours: number, peakC = 1215) =>
  entry(0, { heatingSeconds: seconds(hours * 3600), peakC: celsius(peakC) });
const usual = [taking(10), taking(10.1), taking(9.9), taking(10)];

test.each([
  [10.9, false],
  [11.1, true],
])('a firing of %d h among ones of 10 h took longer: %s', (hours, tookLonger) => {
  expect(usualTime(taking(hours), usual)).toEqual({ usualSeconds: 36_000, tookLonger });
});

test('firings that scatter have a wider notion of usual', () => {
  const scattered = [taking(9), taking(10), taking(11), taking(10), taking(9), taking(11)];
  expect(usualTime(taking(11.5), scattered).tookLonger).toBe(false);
});

test('only firings to the same cone are compared, and three of them are needed', () => {
  expect(usualTime(taking(14, 1060), usual)).toEqual({ usualSeconds: null, tookLonger: false });
  expect(usualTime(taking(14), usual.slice(0, 2)).usualSeconds).toBeNull();
});

test('a log that begins hot has no time to compare', () => {
  expect(usualTime(entry(0, { heatingSeconds: null }), usual).tookLonger).toBe(false);
});
