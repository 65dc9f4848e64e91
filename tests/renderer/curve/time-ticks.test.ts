import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timeTicksIn } from '../../../renderer/curve/time-ticks.ts';

const elapsed = (from: number, to: number, most: number): string[] =>
  timeTicksIn({ from, to }, most, null).map((tick) => tick.elapsed);

describe('the clock under the curve', () => {
  it('counts in whole hours over a day', () => {
    expect(elapsed(0, 24 * 3600, 8)).toEqual([
      '0',
      '3 h',
      '6 h',
      '9 h',
      '12 h',
      '15 h',
      '18 h',
      '21 h',
      '24 h',
    ]);
  });

  it('counts in minutes within an hour, and in seconds within a minute', () => {
    expect(elapsed(3600, 2 * 3600, 4)).toEqual(['1 h', '1:15 h', '1:30 h', '1:45 h', '2 h']);
    expect(elapsed(3600, 3640, 4)).toEqual([
      '1:00:00 h',
      '1:00:10 h',
      '1:00:20 h',
      '1:00:30 h',
      '1:00:40 h',
    ]);
    expect(elapsed(0, 1800, 3)).toEqual(['0', '10 min', '20 min', '30 min']);
  });

  it('tells the time of day where the log has one', () => {
    const ticks = timeTicksIn({ from: 0, to: 6 * 3600 }, 3, '2026-03-14T22:30:00');
    expect(ticks.map(({ clock }) => clock)).toEqual(['22:30', '00:30', '02:30', '04:30']);
  });

  it('has ticks of days for a record of months, and none for no time at all', () => {
    expect(elapsed(0, 90 * 86_400, 8).length).toBeGreaterThan(1);
    expect(elapsed(5, 5, 8)).toEqual([]);
  });

  it('never has more of them than there is room for, all within view and evenly apart', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5000, max: 200_000, noNaN: true }),
        fc.double({ min: 30, max: 400_000, noNaN: true }),
        fc.integer({ min: 2, max: 20 }),
        (from, span, most) => {
          const at = timeTicksIn({ from, to: from + span }, most, null).map(
            (tick) => tick.atSeconds,
          );
          expect(at.length).toBeLessThanOrEqual(most + 1);
          for (const moment of at) {
            expect(moment).toBeGreaterThanOrEqual(from - 1e-6);
            expect(moment).toBeLessThanOrEqual(from + span + 1e-6);
          }
          const steps = new Set(at.slice(1).map((moment, i) => Math.round(moment - at[i]!)));
          expect(steps.size).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
