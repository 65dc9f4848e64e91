import { describe, expect, test } from 'vitest';
import { logStartsHot } from '../../../../core/findings/detectors/log-starts-hot.ts';
import { facts } from '../../../builders/facts.ts';
import { judge, onlyFinding } from '../../../builders/judge.ts';
import { traceFrom } from '../../../builders/trace.ts';

const startingAt = (firstC: number) => {
  const samples = traceFrom([
    [0, firstC],
    [10, firstC],
    [400, 1000],
  ]);
  return facts({ samples, trace: samples.summary });
};

describe('a record that begins hot', () => {
  test('is told with its first temperature', () => {
    const finding = onlyFinding(logStartsHot, startingAt(300));
    expect(finding).toMatchObject({ severity: 'watch', figures: { firstC: 300 } });
    expect(finding.evidence).toEqual([{ fromSeconds: 0, toSeconds: 0, celsius: 300 }]);
  });

  test.each([
    // Rooms of 5 to 35 °C are the ones a healthy firing is tried in.
    [5, null],
    [35, null],
    [45, null],
    [46, 'note'],
    [100, 'note'],
    [101, 'watch'],
  ])('at %d °C: %s', (firstC, severity) => {
    expect(judge(logStartsHot, startingAt(firstC)).findings[0]?.severity ?? null).toBe(severity);
  });
});
