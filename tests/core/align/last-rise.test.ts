import { describe, expect, it } from 'vitest';
import { lastRiseBegins, settlingOf } from '../../../core/align/last-rise.ts';
import { loggedTrace } from '../../builders/alignment.ts';
import { firing, type Stretch } from '../../builders/trace.ts';

/** To 100 °C at 60 °C/h, something there, then up at 600 °C/h for a quarter of an hour. */
const endingInARise = (...there: Stretch[]) =>
  loggedTrace(
    firing(20, { rateCPerHour: 60, toC: 100 }, ...there, { rateCPerHour: 600, toC: 250 }),
  );

const minuteOf = (trace: ReturnType<typeof loggedTrace>): number =>
  trace.atSeconds[lastRiseBegins(trace, 0, trace.atSeconds.length)]! / 60;

describe('the last rise', () => {
  it('begins where what came before had fallen back', () => {
    // 80 min up, 2 min on to 120 °C, 10 min back to 100 °C: the rise begins at 92 min.
    const trace = endingInARise({ rateCPerHour: 600, toC: 120 }, { rateCPerHour: 120, toC: 100 });
    expect(Math.abs(minuteOf(trace) - 92)).toBeLessThan(3);
  });

  it('is all of a climb that never fell back', () => {
    expect(minuteOf(endingInARise({ holdMinutes: 15 }))).toBeLessThan(3);
  });

  it('begins no earlier than it is looked for', () => {
    const trace = endingInARise({ holdMinutes: 15 });
    expect(lastRiseBegins(trace, 150, trace.atSeconds.length)).toBeGreaterThanOrEqual(150);
  });
});

describe('settling', () => {
  it('is two degrees, or three times the noise', () => {
    const trace = endingInARise({ holdMinutes: 15 });
    const noisy = { ...trace.summary, noiseC: 2 as typeof trace.summary.noiseC };
    expect(settlingOf(trace)).toBe(2);
    expect(settlingOf({ ...trace, summary: noisy })).toBe(6);
  });
});
