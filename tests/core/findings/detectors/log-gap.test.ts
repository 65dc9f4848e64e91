import { describe, expect, test } from 'vitest';
import { logGap } from '../../../../core/findings/detectors/log-gap.ts';
import { seconds } from '../../../../core/units.ts';
import { facts, firingFacts, withTrace } from '../../../builders/facts.ts';
import { NOTHING, judge, onlyFinding } from '../../../builders/judge.ts';

const gap = (fromMinutes: number, minutes: number) => ({
  fromMinutes,
  toMinutes: fromMinutes + minutes,
});
const withGaps = (...gaps: ReturnType<typeof gap>[]) => firingFacts({}, { gaps });

/** On the last ramp 1065 °C, 150 °C below the peak, are passed at 495 min. */
const NEAR = 495;

describe('a gap', () => {
  test('is told with how many, how long together and how long the longest', () => {
    const finding = onlyFinding(logGap, withGaps(gap(100, 25), gap(200, 10)));
    expect(finding.figures).toEqual({ gaps: 2, gapMinutes: 35, longestMinutes: 25 });
    expect(finding.evidence).toEqual([
      { fromSeconds: 6000, toSeconds: 7500 },
      { fromSeconds: 12_000, toSeconds: 12_600 },
    ]);
  });

  test.each([
    ['far below the peak', 100, 9, null],
    ['far below the peak', 100, 10, 'note'],
    ['far below the peak', 100, 120, 'note'],
    ['near the peak', NEAR + 5, 4, 'note'],
    ['near the peak', NEAR + 5, 9, 'note'],
    ['near the peak', NEAR + 5, 10, 'watch'],
    ['that reaches near the peak', NEAR - 30, 40, 'watch'],
    ['that ends 8 °C before', NEAR - 28, 20, 'note'],
    ['that ends 4 °C past that', NEAR - 16, 20, 'watch'],
  ])('%s, from %d min for %d min: %s', (_where, from, minutes, severity) => {
    const { findings } = judge(logGap, withGaps(gap(from, minutes)));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('near the peak is told apart from those elsewhere', () => {
    const { findings } = judge(logGap, withGaps(gap(100, 30), gap(NEAR + 50, 12)));
    expect(findings.map(({ severity, figures }) => [severity, figures.gapMinutes])).toEqual([
      ['watch', 12],
      ['note', 30],
    ]);
  });

  test('in which rows came without a reading, or with a false one, is the thermocouple’s', () => {
    const open = { fromSeconds: seconds(6000), toSeconds: seconds(7500) };
    const base = withGaps(gap(100, 25));
    expect(judge(logGap, withTrace(base, { noReadings: [open] }))).toEqual(NOTHING);
    const removed = [{ atSeconds: seconds(7000), celsius: 20, kind: 'dropout' as const }];
    expect(judge(logGap, { ...base, samples: { ...base.samples, removed } })).toEqual(NOTHING);
  });
});

test('no gap in a record without one', () => {
  expect(judge(logGap, facts())).toEqual(NOTHING);
});
