import { expect, it } from 'vitest';
import { bottomOf, linearScale, rightOf } from '../../../../core/report/chart/scale.ts';

it('a scale takes its ends to its ends, backwards too, and an empty range to its start', () => {
  const down = linearScale(0, 1000, 300, 0);
  expect([0, 500, 1000].map(down)).toEqual([300, 150, 0]);
  expect(linearScale(5, 5, 10, 20)(7)).toBe(10);
});

it('a box knows its far edges', () => {
  const box = { left: 10, top: 20, width: 30, height: 40 };
  expect([rightOf(box), bottomOf(box)]).toEqual([40, 60]);
});
