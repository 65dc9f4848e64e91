import { expect, test } from 'vitest';
import {
  loadOf,
  offPrior,
  powerOf,
  PRIOR_DEVIATIONS,
  PRIOR_MEANS,
  wallOf,
} from '../../../core/thermal/kiln-prior.ts';

test('a usual kiln remembers for two to eighteen hours', () => {
  const [mean] = PRIOR_MEANS;
  const [deviation] = PRIOR_DEVIATIONS;
  const hours = [-1.6, 1.6].map((off) => wallOf([mean + off * deviation]).memorySeconds / 3600);
  expect(hours[0]).toBeCloseTo(2, 0);
  expect(hours[1]).toBeCloseTo(18, 0);
});

test('its power would hold it some thousands of degrees over its room, were it all wall', () => {
  const steadyC = powerOf(PRIOR_MEANS) * wallOf(PRIOR_MEANS).memorySeconds;
  expect(steadyC).toBeCloseTo(3000, 6);
});

test('loads are told by logarithms, and what lies at the means is not off', () => {
  expect(loadOf(Math.log(1.5), Math.log(90))).toEqual({
    share: expect.closeTo(1.5, 9) as number,
    coupling: expect.closeTo(90, 9) as number,
  });
  expect(offPrior(PRIOR_MEANS, PRIOR_MEANS, PRIOR_DEVIATIONS)).toEqual([0, 0, 0, 0, 0]);
  expect(offPrior([3], [1], [0.5])).toEqual([4]);
});
