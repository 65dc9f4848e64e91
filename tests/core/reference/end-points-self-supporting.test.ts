import { describe, expect, test } from 'vitest';
import { CONES } from '../../../core/model/cone.ts';
import { SELF_SUPPORTING_END_POINTS } from '../../../core/reference/end-points-self-supporting.ts';
import { againstCones, notRisingWithCone, notRisingWithRate } from './shared-reference.ts';

describe("the cone maker's chart of self-supporting cones (2016)", () => {
  againstCones(SELF_SUPPORTING_END_POINTS, 'chart-self-supporting');

  test('names every cone the analysis knows, in order', () => {
    expect(SELF_SUPPORTING_END_POINTS.rows.map(([cone]) => cone)).toEqual([...CONES]);
  });

  test('rises with the cone and with the rate', () => {
    expect(notRisingWithCone(SELF_SUPPORTING_END_POINTS)).toEqual([]);
    expect(notRisingWithRate(SELF_SUPPORTING_END_POINTS)).toEqual([]);
  });

  test('leaves 022, 021 and 020 blank at 15 °C/h, and nothing else', () => {
    const blank = SELF_SUPPORTING_END_POINTS.rows.filter(([, endPoints]) =>
      endPoints.includes(null),
    );
    expect(blank.map(([cone]) => cone)).toEqual(['022', '021', '020']);
  });
});
