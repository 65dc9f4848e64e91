import { describe, expect, test } from 'vitest';
import { coupleTolerance } from '../../../core/heatwork/couple-tolerance.ts';

describe('the couple’s tolerance', () => {
  test('is that of type K, class 2, where no couple is named, and says so', () => {
    const { toleranceC, assumptions } = coupleTolerance(undefined);
    // 0.75 % (IEC 60584-1): ±9.2 °C at cone 6, about half a cone (analysis document).
    expect(toleranceC(1222)).toBeCloseTo(9.165, 3);
    expect(toleranceC(100)).toBe(2.5);
    expect(assumptions).toEqual(['couple-type-assumed']);
  });

  test('is the named class’s', () => {
    const platinum = coupleTolerance({ type: 'S', class: 'class-1' });
    expect(platinum.toleranceC(1000)).toBe(1);
    expect(platinum.toleranceC(1222)).toBeCloseTo(1.366, 3);
    expect(platinum.assumptions).toEqual([]);
    // ASTM E230 standard grade: 2.2 °C or 0.75 %.
    expect(coupleTolerance({ type: 'K', class: 'standard' }).toleranceC(200)).toBe(2.2);
  });

  test('assumes class 2 for a type alone, or a class not published for it', () => {
    for (const couple of [{ type: 'S' }, { type: 'B', class: 'class-1' }] as const) {
      const { toleranceC, assumptions } = coupleTolerance(couple);
      expect(toleranceC(1200)).toBeCloseTo(3, 6);
      expect(assumptions).toEqual(['couple-class-assumed']);
    }
  });

  test('carries its last formula on beyond the class, and tells where the class ends', () => {
    const { toleranceC, upToC } = coupleTolerance({ type: 'K', class: 'class-1' });
    expect(upToC).toBe(1000);
    expect(toleranceC(1222)).toBeCloseTo(4.888, 3);
  });
});
