import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { medianInterval, repairClock } from '../../../core/trace/clock.ts';

/** A climb of 120 °C/h sampled every minute. */
const climbAt = (minute: number): number => 20 + 2 * minute;
const minutesOf = (count: number): number[] => Array.from({ length: count }, (_, i) => i);
const repair = (stamps: readonly number[], celsius: readonly number[]) =>
  repairClock(Float64Array.from(stamps), Float64Array.from(celsius));

describe('a clock that runs as it should', () => {
  it('is left alone, counted from the first sample', () => {
    const clock = repair([100, 160, 220], [20, 22, 24]);
    expect([...clock.atSeconds]).toEqual([0, 60, 120]);
    expect(clock.repairs).toEqual([]);
  });
});

describe('rows out of order', () => {
  it('are sorted, whatever few rows were swapped', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 2 }),
        (at, distance) => {
          const order = minutesOf(40);
          [order[at], order[at + distance]] = [order[at + distance]!, order[at]!];
          const clock = repair(
            order.map((i) => 60 * i),
            order.map(climbAt),
          );
          expect([...clock.atSeconds]).toEqual(minutesOf(40).map((i) => 60 * i));
          expect([...clock.row].map((row) => order[row])).toEqual(minutesOf(40));
          expect(clock.repairs.map((entry) => entry.kind)).toEqual(['out-of-order']);
        },
      ),
    );
  });

  it('are turned round where the whole log is newest first', () => {
    const order = minutesOf(50).reverse();
    const clock = repair(
      order.map((i) => 60 * i),
      order.map(climbAt),
    );
    expect([...clock.atSeconds]).toEqual(minutesOf(50).map((i) => 60 * i));
    expect(clock.row[0]).toBe(49);
  });
});

describe('a clock that was set', () => {
  it('back an hour in mid-climb is followed on, and said', () => {
    const stamps = minutesOf(300).map((i) => 60 * i - (i >= 150 ? 3600 : 0));
    const clock = repair(stamps, minutesOf(300).map(climbAt));
    expect([...clock.atSeconds]).toEqual(minutesOf(300).map((i) => 60 * i));
    expect(clock.repairs).toMatchObject([
      { kind: 'clock-jump', fromSeconds: 149 * 60, samples: 150, movedSeconds: -3600 },
    ]);
  });

  it('forward an hour in mid-climb is taken back', () => {
    const stamps = minutesOf(300).map((i) => 60 * i + (i >= 150 ? 3600 : 0));
    const clock = repair(stamps, minutesOf(300).map(climbAt));
    expect(clock.atSeconds.at(-1)).toBe(299 * 60);
    expect(clock.repairs.map((entry) => entry.kind)).toEqual(['clock-jump']);
  });

  it.each([
    ['47 min', 47 * 60],
    ['3 h 20 min', 12_000],
    ['a day and 13 min', 87_180],
  ])('forward by %s in mid-climb is taken back', (_, bySeconds) => {
    const stamps = minutesOf(300).map((i) => 60 * i + (i >= 150 ? bySeconds : 0));
    const clock = repair(stamps, minutesOf(300).map(climbAt));
    expect(clock.atSeconds.at(-1)).toBe(299 * 60);
    expect(clock.repairs).toMatchObject([{ kind: 'clock-jump', movedSeconds: bySeconds }]);
  });

  it.each([
    ['7 min', 420],
    ['25 min', 1500],
    ['3 h 20 min', 12_000],
  ])('back by %s is followed on', (_, bySeconds) => {
    const stamps = minutesOf(300).map((i) => 60 * i - (i >= 150 ? bySeconds : 0));
    const clock = repair(stamps, minutesOf(300).map(climbAt));
    expect(clock.atSeconds.at(-1)).toBe(299 * 60);
    expect(clock.repairs).toMatchObject([{ kind: 'clock-jump', movedSeconds: -bySeconds }]);
  });

  it('is not suspected in a power cut, when the kiln came back a little cooler', () => {
    // 47 min without a record; the kiln lost 12 °C and climbs on from there.
    const stamps = minutesOf(300).map((i) => 60 * i + (i >= 150 ? 47 * 60 : 0));
    const celsius = minutesOf(300).map((i) => climbAt(i) - (i >= 150 ? 14 : 0));
    expect(repair(stamps, celsius).repairs).toEqual([]);
  });

  it('is not suspected where the kiln moved on during the pause', () => {
    const minutes = minutesOf(300).map((i) => i + (i >= 150 ? 60 : 0));
    const clock = repair(
      minutes.map((i) => 60 * i),
      minutes.map(climbAt),
    );
    expect(clock.repairs).toEqual([]);
    expect(clock.atSeconds.at(-1)).toBe(359 * 60);
  });

  it('moves other moments of the record with it', () => {
    const stamps = minutesOf(300).map((i) => 60 * i + (i >= 150 ? 3600 : 0));
    const clock = repair(stamps, minutesOf(300).map(climbAt));
    expect(clock.onRepairedClock(200 * 60 + 3600)).toBe(200 * 60);
    expect(clock.onRepairedClock(100 * 60)).toBe(100 * 60);
  });
});

describe('equal stamps', () => {
  it('that rounding made are spread over the time they share', () => {
    const stamps = minutesOf(60).map((i) => 60 * Math.floor(i / 5));
    const clock = repair(stamps, minutesOf(60).map(climbAt));
    expect([...clock.atSeconds.slice(0, 7)]).toEqual([0, 12, 24, 36, 48, 60, 72]);
    expect(clock.atSeconds).toHaveLength(60);
  });

  it('of a row written twice lose the second', () => {
    const stamps = [...minutesOf(100), 99, 100, 101].map((i) => 60 * i);
    const clock = repair(
      stamps,
      stamps.map((stamp) => climbAt(stamp / 60)),
    );
    expect(clock.atSeconds).toHaveLength(102);
    expect(clock.repairs).toMatchObject([{ kind: 'duplicate', samples: 1 }]);
  });
});

describe('stamps that never move', () => {
  it('leave one sample', () => {
    expect([...repair([4796, 4796, 4796], [20, 30, 40]).atSeconds]).toEqual([0]);
  });
});

describe('any stamps at all', () => {
  it('come out strictly increasing from 0, each sample from a row of its own', () => {
    const rows = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 0, max: 1300 })),
      {
        minLength: 1,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(rows, (pairs) => {
        const clock = repair(
          pairs.map(([at]) => at),
          pairs.map(([, celsius]) => celsius),
        );
        expect(clock.atSeconds[0]).toBe(0);
        for (let i = 1; i < clock.atSeconds.length; i++) {
          expect(clock.atSeconds[i]).toBeGreaterThan(clock.atSeconds[i - 1]!);
        }
        expect(new Set(clock.row).size).toBe(clock.row.length);
      }),
    );
  });
});

describe('the median interval', () => {
  it('ignores repeats and pauses', () => {
    expect(medianInterval(Float64Array.of(0, 60, 60, 120, 5000, 5060))).toBe(60);
    expect(medianInterval(Float64Array.of(7))).toBe(0);
  });
});
