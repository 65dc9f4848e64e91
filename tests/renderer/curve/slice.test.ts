import fc from 'fast-check';
import { lowerBound } from '../../../core/numeric/search.ts';
import { describe, expect, it } from 'vitest';
import { celsius, seconds } from '../../../core/units.ts';
import { curveAt, nearestSample, plannedAt, sliceOf } from '../../../renderer/curve/slice.ts';

const trace = (readings: readonly number[], everySeconds = 60) => ({
  atSeconds: Float64Array.from(readings, (_, i) => i * everySeconds),
  celsius: Float64Array.from(readings),
  slopeCPerHour: Float64Array.from(readings, (_, i) => i),
});
const corner = (at: number, c: number) => ({ atSeconds: seconds(at), celsius: celsius(c) });
const span = (from: number, to: number) => ({ fromSeconds: seconds(from), toSeconds: seconds(to) });

describe('finding a moment among samples', () => {
  it('agrees with looking at every sample', () => {
    const times = fc
      .uniqueArray(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 40 })
      .map((list) => list.sort((a, b) => a - b));
    fc.assert(
      fc.property(times, fc.integer({ min: -10, max: 1010 }), (list, moment) => {
        const plain = list.findIndex((at) => at >= moment);
        expect(lowerBound(list, moment)).toBe(plain < 0 ? list.length : plain);
        const nearest = Math.min(...list.map((at) => Math.abs(at - moment)));
        expect(Math.abs(list[nearestSample(list, moment)]! - moment)).toBe(nearest);
      }),
    );
  });
});

describe('the plan at a moment', () => {
  const planned = [corner(0, 20), corner(3600, 120), corner(7200, 120)];

  it('lies on the straight line between its corners', () => {
    expect(plannedAt(planned, 1800)).toBe(70);
    expect(plannedAt(planned, 3600)).toBe(120);
    expect(plannedAt(planned, 5000)).toBe(120);
  });

  it('is nothing before the plan begins, after it ends, and without one', () => {
    expect(plannedAt(planned, -1)).toBeNull();
    expect(plannedAt(planned, 7201)).toBeNull();
    expect(plannedAt([], 0)).toBeNull();
  });

  it('takes the later of two corners that stand at one moment', () => {
    expect(plannedAt([corner(0, 20), corner(100, 20), corner(100, 90), corner(200, 90)], 100)).toBe(
      90,
    );
  });
});

describe('the curve at a moment', () => {
  const course = trace([20, 30, 50]);

  it('lies between the readings on either side, also across a hole', () => {
    expect(curveAt(course, 0)).toBe(20);
    expect(curveAt(course, 60)).toBe(30);
    expect(curveAt(course, 90)).toBe(40);
  });

  it('is the first or the last reading outside of the record', () => {
    expect(curveAt(course, -10)).toBe(20);
    expect(curveAt(course, 1000)).toBe(50);
  });
});

describe('a slice of the trace', () => {
  const all = { from: 0, to: 1e9 };

  it('holds what is in view and one sample more on either side', () => {
    const slice = sliceOf(trace([1, 2, 3, 4, 5, 6, 7]), null, [], { from: 130, to: 230 }, 100);
    expect(slice.atSeconds).toEqual([120, 180, 240]);
    expect(slice.sample).toEqual([2, 3, 4]);
    expect(slice.celsius).toEqual([3, 4, 5]);
    expect(slice.slopeCPerHour).toEqual([2, 3, 4]);
    expect(slice.differenceC).toEqual([null, null, null]);
  });

  it('says how far the kiln was from the plan, where the plan says anything', () => {
    const planned = [corner(0, 0), corner(120, 120)];
    const slice = sliceOf(trace([10, 50, 130, 200]), planned, [], all, 100);
    expect(slice.differenceC).toEqual([10, -10, 10, null]);
  });

  it('breaks the line at every hole, also where two lie between the same samples', () => {
    const holes = [span(61, 119), span(150, 160), span(165, 170)];
    const slice = sliceOf(trace([1, 2, 3, 4, 5]), null, holes, all, 100);
    expect(slice.celsius).toEqual([1, 2, null, 3, null, 4, 5]);
    expect(slice.atSeconds).toEqual([...slice.atSeconds].sort((a, b) => a - b));
  });

  it('keeps the highest and the lowest reading, however few points it may have', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 1300 }), { minLength: 50, maxLength: 400 }),
        (readings) => {
          const slice = sliceOf(trace(readings), null, [], all, 24);
          const kept = slice.celsius.filter((c) => c !== null);
          expect(kept.length).toBeLessThanOrEqual(24);
          expect(Math.max(...kept)).toBe(Math.max(...readings));
          expect(Math.min(...kept)).toBe(Math.min(...readings));
        },
      ),
    );
  });
});
