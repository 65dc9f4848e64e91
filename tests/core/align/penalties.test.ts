import { describe, expect, it } from 'vitest';
import { capped, tempered } from '../../../core/align/penalties.ts';

describe('penalties', () => {
  it('are half a squared deviation at first, as a negative log-likelihood is', () => {
    expect(capped(2, 1, 100)).toBe(2);
    expect(tempered(0.01, 25)).toBeCloseTo(0.01, 4);
  });

  it('stop growing at a cap, or go on slowly past a knee', () => {
    expect(capped(100, 1, 40)).toBe(40);
    expect(tempered(100, 25)).toBeLessThan(50);
    expect(tempered(1000, 25)).toBeGreaterThan(tempered(100, 25));
  });
});
