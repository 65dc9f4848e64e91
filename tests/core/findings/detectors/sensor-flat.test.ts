import { describe, expect, test } from 'vitest';
import { sensorFlat } from '../../../../core/findings/detectors/sensor-flat.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { makeTrace } from '../../../../core/trace/make-trace.ts';
import { alignmentFirings } from '../../../kiln/bench-firings.ts';
import { logOf } from '../../../builders/log.ts';
import { firingFacts } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import type { TraceOptions } from '../../../builders/trace.ts';

/** An invented firing whose reading stayed what it was at a minute, for so many more readings. */
const stuck = (atMinute: number, readings: number, options: TraceOptions = {}): Facts => {
  const { intervalSeconds = 60 } = options;
  const facts = firingFacts({}, { intervalSeconds, noiseC: 0.2, resolutionC: 0.1, ...options });
  const first = Math.round((atMinute * 60) / intervalSeconds);
  const celsius = facts.samples.celsius.slice();
  celsius.fill(celsius[first]!, first, first + readings + 1);
  return { ...facts, samples: { ...facts.samples, celsius } };
};

describe('a reading that stood still', () => {
  test.each([
    [2, null],
    [3, 'watch'],
    [9, 'watch'],
    [10, 'act'],
  ])('for %d min of a climb: %s', (minutes, severity) => {
    const { findings } = judge(sensorFlat, stuck(300, minutes));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('is told with its value and its length', () => {
    const finding = onlyFinding(sensorFlat, stuck(300, 5));
    // At 300 min the plan is at 120 + 210 / 60 · 150 = 645 °C.
    expect(finding.figures['flatC']).toBeCloseTo(645, -1);
    expect(finding.figures).toMatchObject({ flatMinutes: 5, times: 1 });
    expect(finding.evidence).toEqual([
      { fromSeconds: 18_000, toSeconds: 18_300, celsius: finding.figures['flatC'] },
    ]);
  });

  test('in a hold is told where its readings tremble otherwise', () => {
    // The drying hold runs from 60 to 90 min; readings every 10 s.
    const options = { intervalSeconds: 10 };
    expect(onlyFinding(sensorFlat, stuck(65, 60, options)).severity).toBe('act');
  });

  test('after the heat went off is a note', () => {
    expect(onlyFinding(sensorFlat, stuck(800, 20)).severity).toBe('note');
  });
});

describe('no stuck reading', () => {
  test('where a calm logger shows a real hold', () => {
    // Whole degrees and next to no noise: half an hour of the same number is what a hold looks like.
    const calm = firingFacts({}, { intervalSeconds: 10, noiseC: 0.02, resolutionC: 1 });
    expect(judge(sensorFlat, calm)).toEqual(NOTHING);
  });

  test('where readings tremble', () => {
    expect(judge(sensorFlat, firingFacts({}, { noiseC: 0.5, resolutionC: 1 }))).toEqual(NOTHING);
  });
});

test('readings far apart cannot show it', () => {
  const coarse = firingFacts({}, { intervalSeconds: 600 });
  expect(judge(sensorFlat, coarse)).toEqual(inapplicable('readings-too-coarse'));
});

test('the test kiln’s healthy firings have none, whatever their noise, rounding and interval', () => {
  for (const { atSeconds, readingC, name } of alignmentFirings(35, 17)) {
    const samples = makeTrace(logOf({ atSeconds, celsius: readingC }));
    const { outcome } = judge(sensorFlat, { ...firingFacts(), trace: samples.summary, samples });
    expect([name, outcome]).toEqual([name, 'clear']);
  }
}, 20_000);
