import { describe, expect, test } from 'vitest';
import {
  isLifeless,
  leftBehind,
  repeatShare,
  stillRuns,
} from '../../../core/findings/still-runs.ts';
import type { Trace } from '../../../core/model/trace.ts';
import { firing, traceFrom } from '../../builders/trace.ts';

const run = (first: number, last: number) => ({ first, last, celsius: 0 });

test('runs are told by their ends and their value', () => {
  expect(stillRuns(Float64Array.of(1, 2, 2, 2, 3, 3), 3)).toEqual([
    { first: 1, last: 3, celsius: 2 },
  ]);
  expect(stillRuns(Float64Array.of(1, 2, 3, 3), 2)).toEqual([{ first: 2, last: 3, celsius: 3 }]);
  expect(stillRuns(new Float64Array(), 2)).toEqual([]);
});

describe('a kiln that went on behind a run', () => {
  const climb = traceFrom(firing(20, { rateCPerHour: 120, toC: 400 }), { resolutionC: 0.1 });
  /** The readings of minutes 60 to 60 + `minutes` replaced by the first of them. */
  const stuck = (trace: Trace, minutes: number): Trace => {
    const celsius = trace.celsius.slice();
    celsius.fill(celsius[60]!, 60, 60 + minutes + 1);
    return { ...trace, celsius };
  };
  test('makes up for it in one step', () => {
    expect(leftBehind(stuck(climb, 5), { first: 60, last: 65, celsius: climb.celsius[60]! })).toBe(
      true,
    );
  });

  test('is none that held and then went on', () => {
    const held = traceFrom(
      firing(
        20,
        { rateCPerHour: 120, toC: 200 },
        { holdMinutes: 6 },
        { rateCPerHour: 120, toC: 400 },
      ),
      { resolutionC: 0.1 },
    );
    const [only] = stillRuns(held.celsius, 4);
    expect(only).toMatchObject({ celsius: 200 });
    expect(leftBehind(held, only!)).toBe(false);
  });

  test('is not told of a run that the record ends with, nor of one at a turn', () => {
    const last = climb.celsius.length - 1;
    expect(leftBehind(climb, run(last - 4, last))).toBe(false);
    const peak = traceFrom(
      firing(20, { rateCPerHour: 120, toC: 400 }, { rateCPerHour: 120, toC: 20 }),
    );
    expect(leftBehind(peak, { first: 188, last: 192, celsius: 398 })).toBe(false);
  });
});

describe('how often readings repeat', () => {
  const hold = (resolutionC: number) =>
    traceFrom(firing(20, { rateCPerHour: 200, toC: 600 }, { holdMinutes: 300 }), {
      noiseC: 0.3,
      resolutionC,
    });

  test('follows from noise and rounding', () => {
    // Two normal numbers of σ 0.3 fall into one step of 0.1 with about 0.1 / (2·√π·0.3) = 0.094.
    expect(repeatShare(hold(0.1), [])).toBeCloseTo(0.094, 1);
    expect(repeatShare(hold(2), [])).toBeGreaterThan(0.5);
  });

  test('is unknown of a record that hardly stands still', () => {
    expect(repeatShare(traceFrom(firing(20, { rateCPerHour: 200, toC: 600 })), [])).toBeNull();
  });

  test('leaves out what is in question', () => {
    const trace = hold(0.1);
    trace.celsius.fill(600, 300, 400);
    const share = repeatShare(trace, [run(300, 399)])!;
    expect(share).toBeLessThan(repeatShare(trace, [])!);
  });
});

test('a run is lifeless where chance would hardly make it', () => {
  // 1000 readings · 0.1^n < 1e-4 from n = 8 on (0.1^7 · 1000 = 1e-4).
  expect(isLifeless(run(0, 8), 0.1, 1000)).toBe(true);
  expect(isLifeless(run(0, 6), 0.1, 1000)).toBe(false);
  expect(isLifeless(run(0, 80), 0.6, 1000)).toBe(false);
  expect(isLifeless(run(0, 80), null, 1000)).toBe(false);
  // A logger that never repeated may still do so once or twice.
  expect(isLifeless(run(0, 2), 0, 1000)).toBe(false);
});
