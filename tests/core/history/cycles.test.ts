import { describe, expect, test } from 'vitest';
import { findCycles } from '../../../core/history/cycles.ts';
import { dayAt } from '../../builders/histories.ts';
import { seededRandom } from '../../builders/random.ts';

const random = seededRandom(5);

/** Firings over some days whose rest follows from the hour and the day, with a load's scatter. */
const firings = (n: number, restAt: (hour: number, day: number) => number, everyDays = 5) =>
  Array.from({ length: n }, (_, i) => {
    const hour = random.between(0, 24);
    const day = i * everyDays;
    return {
      instant: dayAt(day, hour),
      peakAtSeconds: 0,
      rest: restAt(hour, day) + 0.008 * random.normal(),
    };
  });
const wave = (phase: number) => Math.cos(2 * Math.PI * phase);

describe('power that comes and goes', () => {
  test('by the hour is told with the hour at which it is least', () => {
    const [cycle, ...more] = findCycles(firings(24, (hour) => -0.035 * wave((hour - 16) / 24)));
    expect(more).toEqual([]);
    expect(cycle).toMatchObject({ cycle: 'day' });
    expect(Math.abs(cycle!.lowestAt - 16)).toBeLessThan(2);
    expect(Math.abs(cycle!.amplitudePercent - 3.5)).toBeLessThan(1.2);
  });

  test('by the hour is told with an hour at which a firing peaked, not one between', () => {
    // Begun at 13 and at 22 o'clock, about five hours to the peak; the evening peaks have less.
    const begun = Array.from({ length: 24 }, (_, i) => {
      const isEvening = i % 2 === 0;
      return {
        instant: dayAt(3 * i, (isEvening ? 13 : 22) + random.between(0, 0.5)),
        peakAtSeconds: 3600 * random.between(5, 5.5),
        rest: (isEvening ? -0.03 : 0.03) + 0.004 * random.normal(),
      };
    });
    const [cycle] = findCycles(begun);
    expect(cycle).toMatchObject({ cycle: 'day' });
    expect(cycle!.lowestAt).toBeGreaterThanOrEqual(18);
    expect(cycle!.lowestAt).toBeLessThanOrEqual(19);
  });

  test('by the season is told with the month', () => {
    // Least on the 200th day of the year, in July; the first day is 9 January.
    const seasonal = firings(40, (_, day) => -0.035 * wave((day + 8 - 200) / 365.25), 10);
    expect(findCycles(seasonal)).toMatchObject([{ cycle: 'year', lowestAt: 7 }]);
  });

  test('is no season within half a year', () => {
    const half = firings(40, (_, day) => -0.035 * wave((day + 8 - 100) / 365.25), 4);
    expect(findCycles(half)).toEqual([]);
  });

  test('is none where only loads scatter, nor of few firings, nor a swing below the least', () => {
    let told = 0;
    for (let i = 0; i < 100; i++) told += findCycles(firings(20, () => 0)).length;
    expect(told).toBeLessThanOrEqual(2);
    expect(findCycles(firings(9, (hour) => -0.06 * wave(hour / 24)))).toEqual([]);
    expect(findCycles(firings(60, (hour) => -0.012 * wave(hour / 24)))).toEqual([]);
  });

  test('cannot be told where every firing is at the same hour', () => {
    const mornings = firings(20, () => 0).map((firing, i) => ({
      ...firing,
      instant: dayAt(3 * i, 8 + (i % 3)),
      rest: i % 2 ? 0.03 : -0.03,
    }));
    expect(findCycles(mornings)).toEqual([]);
  });
});
