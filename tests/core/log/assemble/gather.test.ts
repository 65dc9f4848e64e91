import { expect, test } from 'vitest';
import { extentOf, gather, present } from '../../../../core/log/assemble/gather.ts';

test('gathers the values of some rows, as a copy', () => {
  const values = Float64Array.of(1, 2, 3, 4);
  expect([...gather(values, Uint32Array.of(0, 2))]).toEqual([1, 3]);
  const all = gather(values, Uint32Array.of(0, 1, 2));
  all[0] = 9;
  expect(values[0]).toBe(1);
  expect(gather(values, new Uint32Array())).toHaveLength(0);
});

test('passes over what is missing', () => {
  expect([...present(Float64Array.of(NaN, 1, NaN, 0))]).toEqual([1, 0]);
  expect(extentOf(Float64Array.of(NaN, 3, -1, NaN, 7))).toEqual({ first: 3, min: -1, max: 7 });
  expect(extentOf(new Float64Array())).toEqual({ first: NaN, min: Infinity, max: -Infinity });
});
