import { describe, expect, test } from 'vitest';
import { analyzeTrace } from '../../../core/analyze.ts';
import { lastRampShare } from '../../../core/history/last-ramp.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { makeTrace } from '../../../core/trace/make-trace.ts';
import { logOf } from '../../builders/log.ts';
import { fire } from '../../kiln/fire.ts';
import { BACKED_BRICK } from '../../kiln/kilns.ts';
import { FAST_GLAZE } from '../../kiln/schedules.ts';

const fired = (elementWear: number) => {
  const { atSeconds, readingC } = fire({
    seed: 5,
    kiln: BACKED_BRICK,
    schedule: FAST_GLAZE,
    loadKg: 40,
    roomC: 20,
    elementWear,
    logger: { intervalSeconds: 60 },
  });
  const log = logOf({ atSeconds, celsius: readingC });
  const schedule = readSchedule(JSON.stringify(FAST_GLAZE), 'fast.json');
  return analyzeTrace(log, makeTrace(log), { schedule });
};

describe('what the last ramp needs', () => {
  const fresh = fired(1);
  const share = lastRampShare(fresh)!;

  test('is a share of full power', () => {
    expect(share).toBeGreaterThan(0.3);
    expect(share).toBeLessThan(1);
  });

  test('is a larger share where the elements are worn, by as much as they lost', () => {
    // The same kiln and load need the same power; at 1.15 times the resistance there is 1/1.15 of it.
    const worn = lastRampShare(fired(1.15))!;
    expect(Math.abs(worn / share / 1.15 - 1)).toBeLessThan(0.06);
  });

  test('is more for a faster ramp', () => {
    const segments = fresh.schedule!.segments.map((segment, i) =>
      i === 2 ? { ...segment, rateCPerHour: (segment.rateCPerHour as number) * 2 } : segment,
    );
    const faster = { ...fresh, schedule: { ...fresh.schedule!, segments } } as typeof fresh;
    expect(lastRampShare(faster)).toBeGreaterThan(share);
  });

  test('is asked of the chart’s middle rate without a schedule', () => {
    const bare = lastRampShare({ ...fresh, schedule: null })!;
    expect(bare).toBeGreaterThan(0.3);
    expect(bare).toBeLessThan(share);
  });

  test('is unknown where the kiln could not be fitted', () => {
    expect(lastRampShare({ ...fresh, elements: null })).toBeNull();
    const elements = { ...fresh.elements!, fit: null };
    expect(lastRampShare({ ...fresh, elements })).toBeNull();
  });
});
