import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  roundRange,
  roundStep,
  roundTicks,
  timeLabel,
  timeTicks,
} from '../../../../core/report/chart/ticks.ts';

describe('round ticks', () => {
  it.each([
    [0, 1300, 7, [0, 200, 400, 600, 800, 1000, 1200]],
    [-40, 35, 4, [-40, -20, 0, 20]],
    [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
  ])('from %d to %d in at most %d steps', (from, to, most, ticks) => {
    expect(roundTicks(from, to, most).map((value) => Number(value.toFixed(9)))).toEqual(ticks);
  });

  it('are 1, 2 or 5 times a power of ten apart and never too many', () => {
    const span = fc.double({ min: 0.01, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(span, fc.integer({ min: 1, max: 12 }), (length, most) => {
        const step = roundStep(length, most);
        expect(length / step).toBeLessThanOrEqual(most + 1e-6);
        const leading = Number(step.toExponential(3).split('e')[0]);
        expect([1, 2, 5, 10]).toContain(leading);
      }),
    );
  });

  it('widen a range to whole steps', () => {
    expect(roundRange(0, 1270, 7)).toEqual([0, 1400]);
    expect(roundRange(5, 5, 7)).toEqual([5, 6]);
    expect(roundTicks(5, 5, 7)).toEqual([]);
  });
});

describe('ticks of time', () => {
  it.each([
    [22 * 3600, 13, 12],
    [3 * 3600, 13, 13],
    [40 * 60, 13, 9],
    [30 * 24 * 3600, 13, 8],
  ])('over %d s stand on whole minutes or hours', (toSeconds, most, number) => {
    const ticks = timeTicks(toSeconds, most);
    expect(ticks).toHaveLength(number);
    expect(ticks[0]).toBe(0);
    expect(ticks.every((at) => at % 60 === 0)).toBe(true);
  });

  it('are none where no time passes', () => {
    expect(timeTicks(0, 10)).toEqual([]);
  });

  it.each([
    [0, '0'],
    [1800, '30 min'],
    [7200, '2 h'],
    [9000, '2:30 h'],
  ])('%d s is labelled %s', (at, label) => {
    expect(timeLabel(at)).toBe(label);
  });
});
