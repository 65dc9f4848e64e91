import { describe, expect, it } from 'vitest';
import type { Segment } from '../../../core/model/schedule.ts';
import { celsius, celsiusPerHour } from '../../../core/units.ts';
import { scheduleCurve } from '../../../renderer/told/schedule-curve-shape.ts';

const segments: Segment[] = [
  { rateCPerHour: celsiusPerHour(100), minutes: null, targetC: celsius(520), holdMinutes: 60 },
  { rateCPerHour: null, minutes: 120, targetC: celsius(1020), holdMinutes: 0 },
];

describe('scheduleCurve', () => {
  it('lays the legs one after the other from a room’s 20 °C', () => {
    const curve = scheduleCurve(segments, 'C')!;
    // 500 °C at 100 °C/h, an hour's hold, two hours: 8 h in all, worked by hand.
    expect(curve.durationSeconds).toBe(8 * 3600);
    expect(curve.topC).toBe(1020);
    expect(curve.corners).toHaveLength(4);
    const share = (k: number) => (curve.corners[k]![0] - curve.plot.left) / curve.plot.width;
    expect([0, 1, 2, 3].map(share)).toEqual([0, 5 / 8, 6 / 8, 1]);
    expect(curve.hasFreeLegs).toBe(false);
    expect(curve.stretches).toHaveLength(2);
  });

  it('puts the axis in the reader’s unit without moving the curve’s own shape', () => {
    const inF = scheduleCurve(segments, 'F')!;
    // 1020 °C is 1868 °F; the axis ends on a round figure above it.
    expect(inF.temperatureTicks.at(-1)?.value).toBe(2000);
    expect(scheduleCurve(segments, 'C')!.temperatureTicks.at(-1)?.value).toBe(1500);
  });

  it('says when a leg’s length is only a usual kiln’s', () => {
    const free = { rateCPerHour: 'full', minutes: null, targetC: celsius(900), holdMinutes: 0 };
    expect(scheduleCurve([free as Segment], 'C')?.hasFreeLegs).toBe(true);
  });

  it('draws nothing where there is no leg', () => {
    expect(scheduleCurve([], 'C')).toBeNull();
  });
});
