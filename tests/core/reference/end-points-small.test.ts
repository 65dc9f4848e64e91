import { describe, expect, test } from 'vitest';
import { SMALL_END_POINTS } from '../../../core/reference/end-points-small.ts';
import { againstCones, cellsOf, notRisingWithCone } from './shared-reference.ts';

describe("the cone maker's chart of small cones (2016)", () => {
  againstCones(SMALL_END_POINTS, 'chart-small');

  test('rises with the cone', () => {
    expect(notRisingWithCone(SMALL_END_POINTS)).toEqual([]);
  });

  test('says which rows were seen: 022 to 08', () => {
    const seen = cellsOf(SMALL_END_POINTS).filter((cell) => cell.obtained === 'seen');
    expect(seen.map((cell) => cell.cone)).toEqual(
      SMALL_END_POINTS.rows.slice(0, 15).map(([cone]) => cone),
    );
  });
});
