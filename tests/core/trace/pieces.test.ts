import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPieces } from '../../../core/trace/pieces.ts';

const spreadCost = (values: readonly number[]) => (from: number, to: number) => {
  const piece = values.slice(from, to);
  const mean = piece.reduce((sum, value) => sum + value, 0) / piece.length;
  return piece.reduce((sum, value) => sum + (value - mean) ** 2, 0);
};

const totalOf = (
  ends: readonly number[],
  penalty: number,
  cost: (a: number, b: number) => number,
) => ends.reduce((sum, end, k) => sum + cost(ends[k - 1] ?? 0, end) + (k > 0 ? penalty : 0), 0);

describe('the cheapest pieces', () => {
  it('find the step in a stair', () => {
    const values = [1, 1, 1, 1, 5, 5, 5, 9, 9];
    expect(cheapestPieces(values.length, 1, 2, spreadCost(values))).toEqual([4, 7, 9]);
  });

  it('cost no more than any other cut (tried out one by one)', () => {
    const short = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(short, fc.integer({ min: 0, max: 20 }), (values, penalty) => {
        const cost = spreadCost(values);
        const found = totalOf(cheapestPieces(values.length, 1, penalty, cost), penalty, cost);
        for (let cuts = 0; cuts < 2 ** (values.length - 1); cuts++) {
          const ends = values.flatMap((_, i) =>
            (cuts >> i) & 1 && i < values.length - 1 ? [i + 1] : [],
          );
          expect(found).toBeLessThanOrEqual(
            totalOf([...ends, values.length], penalty, cost) + 1e-9,
          );
        }
      }),
    );
  });

  it('keep to the shortest piece allowed', () => {
    const values = [0, 9, 0, 9, 0, 9];
    const ends = cheapestPieces(6, 3, 0, spreadCost(values));
    expect(ends.every((end, k) => end - (ends[k - 1] ?? 0) >= 3)).toBe(true);
  });
});
