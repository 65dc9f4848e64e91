import { describe, expect, it } from 'vitest';
import { seededRandom, xoshiro } from './random.ts';

describe('the random source', () => {
  it('gives the first numbers of xoshiro128** from the state 1, 2, 3, 4', () => {
    // By hand from the published recurrence: 2·5 = 10, rotated 7 left 1280, times 9 = 11520; then
    // the second word is 2 ^ (3 ^ 1) = 0; then 1029·5 = 5145, rotated 658560, times 9 = 5927040.
    const next = xoshiro([1, 2, 3, 4]);
    expect([next(), next(), next()]).toEqual([11520, 0, 5927040]);
  });

  it('repeats itself from the same seed and not from another', () => {
    const draw = (seed: number): number[] => {
      const random = seededRandom(seed);
      return Array.from({ length: 5 }, () => random.uniform());
    };
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  it('forks streams that do not depend on how much was drawn before', () => {
    const one = seededRandom(3);
    const two = seededRandom(3);
    two.uniform();
    expect(one.fork('noise').uniform()).toBe(two.fork('noise').uniform());
    expect(one.fork('noise').uniform()).not.toBe(one.fork('supply').uniform());
  });

  it('is uniform and normal as it says, within five standard errors', () => {
    const random = seededRandom(11);
    const count = 20_000;
    let sum = 0;
    let normalSum = 0;
    let normalSquares = 0;
    for (let i = 0; i < count; i++) {
      sum += random.uniform();
      const drawn = random.normal();
      normalSum += drawn;
      normalSquares += drawn * drawn;
    }
    expect(Math.abs(sum / count - 0.5)).toBeLessThan(5 / Math.sqrt(12 * count));
    expect(Math.abs(normalSum / count)).toBeLessThan(5 / Math.sqrt(count));
    expect(Math.abs(normalSquares / count - 1)).toBeLessThan(5 * Math.sqrt(2 / count));
  });

  it('draws whole numbers over the full range, ends included', () => {
    const random = seededRandom(5);
    const seen = new Set(Array.from({ length: 500 }, () => random.whole(1, 6)));
    expect([...seen].sort()).toEqual([1, 2, 3, 4, 5, 6]);
  });
});
