import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unwrapClock } from '../../../../core/log/assemble/unwrap-clock.ts';

const clock = (...times: string[]): Float64Array =>
  Float64Array.from(times, (time) => {
    const [hour = 0, minute = 0] = time.split(':').map(Number);
    return hour * 3600 + minute * 60;
  });
const hours = (seconds: Float64Array): number[] => [...seconds].map((value) => value / 3600);

describe('a clock', () => {
  test('runs on across midnight, however often', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 86_399 }),
        fc.integer({ min: 1, max: 36_000 }),
        fc.integer({ min: 2, max: 90 }),
        (start, step, rows) => {
          const wrapped = Float64Array.from(
            { length: rows },
            (_, row) => (start + row * step) % 86_400,
          );
          const { seconds } = unwrapClock(wrapped, false);
          for (let row = 1; row < rows; row += 1)
            expect(seconds[row]! - seconds[row - 1]!).toBe(step);
        },
      ),
      // Clocks that could be of twelve hours are ambiguous, and are tested below.
      { numRuns: 500, examples: [[82_800, 3600, 30]] },
    );
  });

  test('that was set back stays set back: readers repair it or report it', () => {
    const set = clock('13:00', '13:01', '13:02', '12:03', '12:04');
    expect(unwrapClock(set, false)).toEqual({ seconds: set, assumption: null });
  });

  test('written down by hand turns to the next day', () => {
    const { seconds, assumption } = unwrapClock(clock('20:00', '23:00', '14:00'), false);
    expect(hours(seconds)).toEqual([20, 23, 38]);
    expect(assumption).toBe('day-after-midnight');
  });

  test('of twelve hours without a mark turns to the afternoon', () => {
    const { seconds, assumption } = unwrapClock(
      clock('8:00', '10:00', '12:00', '2:00', '4:00'),
      false,
    );
    expect(hours(seconds)).toEqual([8, 10, 12, 14, 16]);
    expect(assumption).toBe('twelve-hour-clock');
  });

  test('beyond 24 hours counts the time elapsed', () => {
    const long = clock('23:00', '25:00', '24:00');
    expect(unwrapClock(long, false).seconds).toEqual(long);
  });

  test('passes over what could not be read', () => {
    expect(hours(unwrapClock(Float64Array.of(82_800, NaN, 3600), false).seconds)).toEqual([
      23,
      NaN,
      25,
    ]);
  });
});
