import { describe, expect, it } from 'vitest';
import { coneTip, conePath } from '../../../../core/report/chart/cone-shape.ts';

const form = { x: 0, y: 0, length: 80, foot: 20, tip: 4 };

describe('a drawn cone', () => {
  it('stands with a slight lean when nothing has happened to it', () => {
    const [x, y] = coneTip(form, 0);
    expect(Math.hypot(x, y)).toBeCloseTo(80, 1);
    expect((Math.atan2(x, -y) * 180) / Math.PI).toBeCloseTo(8, 1);
  });

  it('has its tip level with its foot at 90°, the end point', () => {
    expect(coneTip(form, 90)[1]).toBeCloseTo(0, 0);
    expect(coneTip(form, 90)[0]).toBeGreaterThan(20);
  });

  it('sinks steadily as it bends', () => {
    const heights = [0, 20, 40, 60, 80, 100].map((bend) => -coneTip(form, bend)[1]);
    expect([...heights].sort((a, b) => b - a)).toEqual(heights);
  });

  it('is a closed outline of finite coordinates', () => {
    expect(conePath(form, 45)).toMatch(/^M(-?[\d.]+ -?[\d.]+L?)+Z$/);
  });
});
