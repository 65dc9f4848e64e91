import { describe, expect, it } from 'vitest';
import { zTraceSummary } from '../../../core/model/trace.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';
import { firing, traceFrom } from '../../builders/trace.ts';
import { logOf } from '../../builders/log.ts';

const glaze = traceFrom(
  firing(
    20,
    { holdMinutes: 30 },
    { rateCPerHour: 120, toC: 1220 },
    { holdMinutes: 15 },
    { rateCPerHour: 150, toC: 200 },
  ),
  { intervalSeconds: 30, noiseC: 0.4 },
);

describe('making a trace', () => {
  it('gives a summary that the document takes', () => {
    const { summary } = makeTrace(logOf(glaze));
    expect(zTraceSummary.parse(summary)).toEqual(summary);
    expect(summary.peakC).toBeGreaterThan(1219);
    expect(summary.noiseC).toBeGreaterThan(0.3);
    expect(summary.noiseC).toBeLessThan(0.5);
    expect(Math.abs(summary.startSeconds! - 1800)).toBeLessThan(180);
    expect(Math.abs(summary.offSeconds! - (1800 + 36_000 + 900))).toBeLessThan(180);
  });

  it('takes spikes out of every column alike and lists them', () => {
    const celsius = Float64Array.from(glaze.celsius);
    celsius[500]! += 90;
    const trace = makeTrace(
      logOf({ ...glaze, celsius }, { setpointC: Float64Array.from(celsius, (_, i) => i) }),
    );
    expect(trace.summary.repairs).toMatchObject([{ kind: 'spike', samples: 1 }]);
    expect(trace.removed).toMatchObject([{ atSeconds: 15_000, kind: 'spike' }]);
    expect(trace.celsius).toHaveLength(celsius.length - 1);
    expect(trace.setpointC![500]).toBe(501);
  });

  it('keeps a hole a hole, and says how long there was no reading', () => {
    const isKept = (_: number, i: number) => i < 500 || i >= 560;
    const holed = {
      atSeconds: glaze.atSeconds.filter(isKept),
      celsius: glaze.celsius.filter(isKept),
    };
    const noReadingSeconds = glaze.atSeconds.slice(500, 560);
    const { summary } = makeTrace(logOf(holed, { noReadingSeconds }));
    const hole = { fromSeconds: 499 * 30, toSeconds: 560 * 30 };
    expect(summary.gaps).toEqual([hole]);
    expect(summary.noReadings).toEqual([{ fromSeconds: 500 * 30 - 15, toSeconds: 559 * 30 + 15 }]);
  });

  it('refuses a record of which one reading is left', () => {
    const one = { atSeconds: Float64Array.of(0, 60), celsius: Float64Array.of(20, -9999) };
    expect(() => makeTrace(logOf(one))).toThrow(Refusal);
  });

  it('says when the record began, though the log was written newest first', () => {
    const newestFirst = {
      atSeconds: glaze.atSeconds.map((_, i) => -i * 30),
      celsius: glaze.celsius.slice().reverse(),
    };
    const endInstant = '2024-03-15T02:00:00+01:00';
    const { startInstant, durationSeconds } = makeTrace(
      logOf(newestFirst, { startInstant: endInstant }),
    ).summary;
    const tookMs = Date.parse(endInstant) - Date.parse(startInstant!);
    expect(tookMs / 1000).toBe(durationSeconds);
    expect(startInstant).toMatch(/\+01:00$/);
  });
});
