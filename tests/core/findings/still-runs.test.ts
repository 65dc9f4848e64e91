import { describe, expect, test } from 'vitest';
import {
  isLifeless,
  leftBehind,
  repeatingBut,
  stillRuns,
} from '../../../core/findings/still-runs.ts';
import type { Trace } from '../../../core/model/trace.ts';
import { celsiusDelta } from '../../../core/units.ts';
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

  test('is not told of like readings that noise makes on a slow climb', () => {
    const noisy = { ...climb.summary, noiseC: celsiusDelta(1.2), resolutionC: celsiusDelta(1) };
    const three = stuck(climb, 3);
    const found = { first: 60, last: 63, celsius: climb.celsius[60]! };
    expect(leftBehind(three, found)).toBe(true);
    expect(leftBehind({ ...three, summary: noisy }, found)).toBe(false);
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

  test('is none that held and then went off faster than it had come', () => {
    // As on a test firing: a slow end of a hold in whole °F, then 155 °C/h, a reading every 90 s.
    const trace = traceFrom(
      firing(
        20,
        ...[
          { rateCPerHour: 97, toC: 188 },
          { rateCPerHour: 8, toC: 189 },
        ],
        { rateCPerHour: 155, toC: 400 },
      ),
      { resolutionC: 5 / 9, intervalSeconds: 90 },
    );
    const runs = stillRuns(trace.celsius, 3);
    expect(runs.length).toBeGreaterThan(0);
    expect(runs.filter((one) => leftBehind(trace, one))).toEqual([]);
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
  const none = run(0, 0);

  test('follows from noise and rounding', () => {
    // Two normal numbers of σ 0.3 fall into one step of 0.1 with about 0.1 / (2·√π·0.3) = 0.094.
    expect(repeatingBut(hold(0.1), none).share).toBeCloseTo(0.094, 1);
    expect(repeatingBut(hold(2), none).share).toBeGreaterThan(0.5);
  });

  test('is unknown of a record that hardly stands still', () => {
    const climb = traceFrom(firing(20, { rateCPerHour: 200, toC: 600 }));
    expect(repeatingBut(climb, none).share).toBeNull();
  });

  test('leaves out the run in question, and no other', () => {
    const trace = hold(0.1);
    trace.celsius.fill(600, 300, 400);
    expect(repeatingBut(trace, none).longest).toBeGreaterThanOrEqual(99);
    expect(repeatingBut(trace, run(300, 399)).longest).toBeLessThan(10);
    const share = repeatingBut(trace, run(300, 399)).share!;
    expect(share).toBeLessThan(repeatingBut(trace, none).share!);
  });
});

test('a run is lifeless where chance would hardly make it', () => {
  const repeating = (share: number | null, longest = 2) => ({ share, longest });
  // 1000 readings · 0.1^n < 1e-4 from n = 8 on (0.1^7 · 1000 = 1e-4).
  expect(isLifeless(run(0, 8), repeating(0.1), 1000)).toBe(true);
  expect(isLifeless(run(0, 6), repeating(0.1), 1000)).toBe(false);
  expect(isLifeless(run(0, 80), repeating(0.6), 1000)).toBe(false);
  expect(isLifeless(run(0, 80), repeating(null), 1000)).toBe(false);
  // A logger that never repeated may still do so once or twice.
  expect(isLifeless(run(0, 2), repeating(0, 0), 1000)).toBe(false);
  // A record with other rows half as long shows that its readings do so.
  expect(isLifeless(run(0, 20), repeating(0.1, 10), 1000)).toBe(true);
  expect(isLifeless(run(0, 20), repeating(0.1, 11), 1000)).toBe(false);
});
