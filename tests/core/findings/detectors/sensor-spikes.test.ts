import { describe, expect, test } from 'vitest';
import { sensorSpikes } from '../../../../core/findings/detectors/sensor-spikes.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import type { Repair } from '../../../../core/model/trace.ts';
import { seconds } from '../../../../core/units.ts';
import { facts, withTrace } from '../../../builders/facts.ts';
import { NOTHING, judge, onlyFinding } from '../../../builders/judge.ts';

const bursts = (count: number, samples = 1, kind: Repair['kind'] = 'spike'): Facts =>
  withTrace(facts(), {
    repairs: Array.from({ length: count }, (_, i) => ({
      kind,
      fromSeconds: seconds(600 * i),
      toSeconds: seconds(600 * i),
      samples,
    })),
  });

describe('readings that jump', () => {
  test('are told with how often, how many, what share, and the worst', () => {
    const base = bursts(4, 3);
    const removed = [
      { atSeconds: seconds(100 * 60), celsius: 400, kind: 'spike' as const },
      { atSeconds: seconds(75 * 60), celsius: 20, kind: 'dropout' as const },
      { atSeconds: seconds(75 * 60), celsius: 9999, kind: 'duplicate' as const },
    ];
    const { figures } = onlyFinding(sensorSpikes, {
      ...base,
      samples: { ...base.samples, removed },
    });
    expect(figures).toMatchObject({ times: 4, spikes: 12 });
    expect(figures.falsePercent).toBeCloseTo((100 * 12) / (base.trace.samples + 12), 9);
    expect(figures.timesPerHour).toBeCloseTo((4 * 60) / 1353, 9);
    // At 100 min the kiln is 10 min into the middle ramp of 150 °C/h: 145 °C.
    expect(figures.largestDeltaC).toBeCloseTo(400 - 145, 9);
  });

  test.each([
    [2, 1, null],
    [3, 1, 'note'],
    [9, 1, 'note'],
    [10, 1, 'watch'],
    // 1354 samples: 5 % false are 71 of 1425.
    [10, 7, 'watch'],
    [12, 6, 'act'],
    // 22.55 h: four an hour are 90.2.
    [90, 0.5, 'watch'],
    [91, 0.5, 'act'],
  ])('%d bursts of %d: %s', (count, samples, severity) => {
    const { findings } = judge(sensorSpikes, bursts(count, samples));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test.each(['spike', 'dropout', 'out-of-range'] as const)('count each %s', (kind) => {
    expect(onlyFinding(sensorSpikes, bursts(3, 1, kind)).severity).toBe('note');
  });
});

test('no spikes where other things were repaired, or nothing', () => {
  expect(judge(sensorSpikes, bursts(50, 1, 'duplicate'))).toEqual(NOTHING);
  expect(judge(sensorSpikes, facts())).toEqual(NOTHING);
});
