import { describe, expect, test } from 'vitest';
import { OLDER_LARGE_END_POINTS } from '../../../core/reference/end-points-older-large.ts';
import { againstCones, notRisingWithCone } from './shared-reference.ts';

describe('the earlier chart of large cones', () => {
  againstCones(OLDER_LARGE_END_POINTS, 'chart-older-large');

  test('rises with the cone', () => {
    expect(notRisingWithCone(OLDER_LARGE_END_POINTS)).toEqual([]);
  });

  test('has no cone 5½, 05½ or 14', () => {
    const cones = OLDER_LARGE_END_POINTS.rows.map(([cone]) => cone);
    expect(cones.filter((cone) => ['5.5', '05.5', '14'].includes(cone))).toEqual([]);
  });
});
