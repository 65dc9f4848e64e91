import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickLines } from '../../../../core/log/show/pick-lines.ts';

test('a short file is shown whole', () => {
  expect(pickLines(5, [3])).toEqual([1, 2, 3, 4, 5]);
  expect(pickLines(0, [])).toEqual([]);
});

test('of a long file the first lines, the last, and two on either side of each row to look at', () => {
  const picked = pickLines(1_000_000, [500]);
  expect(picked.slice(0, 120)).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
  expect(picked.slice(120, 125)).toEqual([498, 499, 500, 501, 502]);
  expect(picked.slice(125)).toEqual(Array.from({ length: 40 }, (_, i) => 999_961 + i));
});

test('lines rise, none comes twice and none lies outside the file', () => {
  fc.assert(
    fc.property(fc.nat(2000), fc.array(fc.nat(3000), { maxLength: 200 }), (count, around) => {
      const picked = pickLines(count, around);
      picked.forEach((line, index) => {
        expect(line).toBeGreaterThan(picked[index - 1] ?? 0);
        expect(line).toBeLessThanOrEqual(count);
      });
    }),
  );
});
