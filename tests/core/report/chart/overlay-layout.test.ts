import { expect, it } from 'vitest';
import {
  overlayLayout,
  OVERLAY_WIDTH,
  ribbonRowTop,
} from '../../../../core/report/chart/overlay-layout.ts';
import { bottomOf, rightOf } from '../../../../core/report/chart/scale.ts';

it('the parts stand under each other on one clock, and none overlaps', () => {
  const { plot, difference, slope, ribbon, axisTop, height } = overlayLayout(true, 2);
  const boxes = [plot, difference!, slope, ribbon];
  boxes.forEach((box, index) => {
    expect([box.left, rightOf(box)]).toEqual([plot.left, rightOf(plot)]);
    const next = boxes[index + 1];
    if (next) expect(bottomOf(box)).toBeLessThan(next.top);
  });
  expect(axisTop).toBeGreaterThan(bottomOf(ribbon));
  expect(height).toBeGreaterThan(axisTop + 26);
  expect(rightOf(plot)).toBeLessThan(OVERLAY_WIDTH);
});

it('without a plan there is neither difference nor a planned row', () => {
  const { difference, ribbonRows, ribbon } = overlayLayout(false, 1);
  expect(difference).toBeNull();
  expect(ribbonRows).toEqual(['actual']);
  expect(ribbonRowTop(ribbon, 0)).toBe(ribbon.top);
});
