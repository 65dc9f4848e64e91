import { expect, test } from 'vitest';
import { extentOf, gather, present } from '../../../../core/log/assemble/gather.ts';

test('gathers the values of some rows', () => {
  const values = Float64Array.of(1, 2, 3, 4);
  expect([...gather(values, Uint32Array.of(0, 2))]).toEqual([1, 3]);
  expect(gather(values, new Uint32Array())).toHaveLength(0);
});

test('all rows are handed over, unless the column has much room to spare', () => {
  const all = Uint32Array.of(0, 1, 2, 3);
  const tight = new Float64Array(4);
  expect(gather(tight, all).buffer).toBe(tight.buffer);
  const roomy = new Float64Array(40);
  expect(gather(roomy, all).buffer.byteLength).toBe(4 * 8);
});

test('passes over what is missing', () => {
  expect([...present(Float64Array.of(NaN, 1, NaN, 0))]).toEqual([1, 0]);
  expect(extentOf(Float64Array.of(NaN, 3, -1, NaN, 7))).toEqual({ first: 3, min: -1, max: 7 });
  expect(extentOf(new Float64Array())).toEqual({ first: NaN, min: Infinity, max: -Infinity });
});
