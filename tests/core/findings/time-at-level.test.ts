import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minutesAtLevel } from '../../../core/findings/time-at-level.ts';
import { firing, traceFrom, type TraceOptions } from '../../builders/trace.ts';

const TOLERANCE_C = 3;

/** Up at one rate, a hold at 1000 °C, on at another; and the middle of the hold. */
const holding = (
  upCPerHour: number,
  holdMinutes: number,
  onCPerHour: number,
  toC: number,
  options: TraceOptions = {},
) => {
  const corners = firing(
    900,
    { rateCPerHour: upCPerHour, toC: 1000 },
    { holdMinutes },
    { rateCPerHour: onCPerHour, toC },
  );
  const arrivedMinutes = corners[1]![0];
  return {
    trace: traceFrom(corners, options),
    middleSeconds: (arrivedMinutes + holdMinutes / 2) * 60,
  };
};

describe('the time a record stands at a level', () => {
  test.each([
    ['and cools', 800],
    ['and climbs on', 1100],
  ])('is that of a hold that it climbs to %s', (_what, toC) => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 2, max: 120, noNaN: true }),
        fc.double({ min: 30, max: 400, noNaN: true }),
        fc.integer({ min: 10, max: 60 }),
        (up, hold, on, intervalSeconds) => {
          const { trace, middleSeconds } = holding(up, hold, on, toC, { intervalSeconds });
          const minutes = minutesAtLevel(trace, middleSeconds, 1000, TOLERANCE_C)!;
          // A corner between two samples is cut by at most one of them at either end.
          expect(Math.abs(minutes - hold)).toBeLessThanOrEqual((2 * intervalSeconds) / 60);
        },
      ),
    );
  });

  test('is no more than one reading for a peak without a hold', () => {
    const { trace, middleSeconds } = holding(60, 0.001, 60, 800);
    expect(minutesAtLevel(trace, middleSeconds, 1000, TOLERANCE_C)).toBeLessThanOrEqual(1);
  });

  test('is unknown where the record is not at the level', () => {
    const { trace, middleSeconds } = holding(60, 30, 60, 800);
    expect(minutesAtLevel(trace, middleSeconds, 1010, TOLERANCE_C)).toBeNull();
    const empty = { atSeconds: new Float64Array(), celsius: new Float64Array() };
    expect(minutesAtLevel(empty, 0, 1000, TOLERANCE_C)).toBeNull();
  });

  test('runs to the ends of the record where it begins and ends in the hold', () => {
    const trace = traceFrom([
      [0, 1000],
      [45, 1000],
    ]);
    expect(minutesAtLevel(trace, 600, 1000, TOLERANCE_C)).toBe(45);
  });
});
