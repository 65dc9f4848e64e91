import { describe, expect, it } from 'vitest';
import { laneOf } from '../../../../core/report/chart/lanes.ts';
import { linearScale } from '../../../../core/report/chart/scale.ts';

const box = { left: 0, top: 0, width: 100, height: 40 };
const time = linearScale(0, 400, 0, 100);
const at = [0, 100, 200, 300, 400];

describe('a lane', () => {
  it('lies about its zero with round ends in the reader’s degrees', () => {
    const lane = laneOf('difference', at, [0, 30, 30, -30, -30], [[0, 5]], box, time, 'C');
    expect(lane.zeroY).toBe(20);
    expect(lane.ticks.map(({ value }) => value)).toEqual([50, 0, -50]);
    // 30 °C apart are 54 °F apart: no 32 enters.
    const inF = laneOf('difference', at, [0, 30, 30, -30, -30], [[0, 5]], box, time, 'F');
    expect(inF.ticks[0]?.value).toBe(100);
  });

  it('fills above zero and below it apart', () => {
    const lane = laneOf('difference', at, [10, 10, 10, -10, -10], [[0, 5]], box, time, 'C');
    const ys = (path: string) => [...path.matchAll(/[\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(Math.max(...ys(lane.above))).toBe(20);
    expect(Math.min(...ys(lane.above))).toBe(0);
    expect(Math.min(...ys(lane.below))).toBe(20);
  });

  it('clips a slope’s rare plunge at its edge, and never a difference', () => {
    const many = Array.from({ length: 100 }, (_, index) => index * 4);
    const values = many.map((_, index) => (index === 50 ? -900 : 100));
    const lane = laneOf('slope', many, values, [[0, 100]], box, time, 'C');
    expect(lane.ticks[0]?.value).toBe(100);
    expect(lane.line).toContain(' 40L');
    const whole = laneOf('difference', many, values, [[0, 100]], box, time, 'C');
    expect(whole.ticks[0]?.value).toBe(1000);
  });

  it('draws nothing where nothing is known', () => {
    const lane = laneOf(
      'difference',
      at,
      at.map(() => null),
      [[0, 5]],
      box,
      time,
      'C',
    );
    expect(lane.line).toBe('');
  });
});
