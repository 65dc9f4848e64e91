import { expect, test } from 'vitest';
import { logCoarse } from '../../../../core/findings/detectors/log-coarse.ts';
import { celsiusDelta, seconds } from '../../../../core/units.ts';
import { facts, withTrace } from '../../../builders/facts.ts';
import { NOTHING, judge, onlyFinding } from '../../../builders/judge.ts';

const log = (intervalMinutes: number, stepC: number) =>
  withTrace(facts(), {
    medianIntervalSeconds: seconds(intervalMinutes * 60),
    resolutionC: celsiusDelta(stepC),
  });

test('a coarse log is told with its interval and its step, over its whole length', () => {
  const finding = onlyFinding(logCoarse, log(10, 1));
  expect(finding.figures).toEqual({ intervalMinutes: 10, stepDeltaC: 1 });
  expect(finding.evidence).toEqual([{ fromSeconds: 0, toSeconds: facts().trace.durationSeconds }]);
});

test.each([
  [5, 1, null],
  [5.1, 1, 'note'],
  [15, 1, 'note'],
  [15.1, 1, 'watch'],
  [1, 4.9, null],
  [1, 5, 'note'],
])('a reading every %d min in steps of %d °C: %s', (minutes, stepC, severity) => {
  expect(judge(logCoarse, log(minutes, stepC)).findings[0]?.severity ?? null).toBe(severity);
});

test('an ordinary log is not coarse', () => {
  expect(judge(logCoarse, facts())).toEqual(NOTHING);
});
