import { describe, expect, test } from 'vitest';
import { joinTraces } from '../../../core/trace/join-traces.ts';
import { twoRuns } from '../../builders/runs.ts';

const DAY = 86_400;
const [first, second] = twoRuns();
const joined = joinTraces(first.trace, second.trace, DAY);
const { summary } = joined;

describe('two records as one', () => {
  test('has the samples of both on the first one’s clock', () => {
    const count = first.trace.celsius.length;
    expect(joined.joinedAt).toBe(count);
    expect(summary.samples).toBe(count + second.trace.celsius.length);
    expect(joined.atSeconds[count - 1]).toBe(first.trace.summary.durationSeconds);
    expect(joined.atSeconds[count]).toBe(DAY);
    expect(joined.atSeconds.every((at, i) => i === 0 || at > joined.atSeconds[i - 1]!)).toBe(true);
    expect(joined.smoothC.at(-1)).toBe(second.trace.smoothC.at(-1));
  });

  test('shows the time between them as a gap', () => {
    expect(summary.gaps).toEqual([
      { fromSeconds: first.trace.summary.durationSeconds, toSeconds: DAY },
    ]);
  });

  test('peaks where the hotter one does, begins with the first and ends with the second', () => {
    const after = second.trace.summary;
    expect(summary.peakC).toBe(after.peakC);
    expect(summary.peakAtSeconds).toBe(DAY + after.peakAtSeconds);
    expect(summary.startSeconds).toBe(first.trace.summary.startSeconds);
    expect(summary.offSeconds).toBe(DAY + after.offSeconds!);
    expect(summary.durationSeconds).toBe(DAY + after.durationSeconds);
    expect(summary.startInstant).toBe('2026-03-01T08:00:00');
    expect(summary.legs).toHaveLength(first.trace.summary.legs.length + after.legs.length);
    const turned = joinTraces(second.trace, first.trace, 2 * DAY).summary;
    expect(turned.peakAtSeconds).toBe(after.peakAtSeconds);
  });

  test('has no readings where only one had a column', () => {
    const { trace } = first;
    const output = new Float64Array(trace.celsius.length).fill(40);
    const withMore = {
      ...trace,
      outputPercent: output,
      zones: [{ channel: 'floor', celsius: trace.celsius }],
    };
    const both = joinTraces(withMore, second.trace, DAY);
    const at = both.joinedAt!;
    expect(both.setpointC).toBeNull();
    expect(both.outputPercent![at - 1]).toBe(40);
    expect(both.outputPercent![at]).toBeNaN();
    expect(both.zones.map(({ channel }) => channel)).toEqual(['floor']);
    expect(both.zones[0]!.celsius[0]).toBe(trace.celsius[0]);
    expect(both.zones[0]!.celsius.at(-1)).toBeNaN();
  });
});
