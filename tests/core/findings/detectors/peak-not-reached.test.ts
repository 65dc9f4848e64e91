import { describe, expect, test } from 'vitest';
import { endedEarly } from '../../../../core/findings/detectors/ended-early.ts';
import { peakNotReached } from '../../../../core/findings/detectors/peak-not-reached.ts';
import { celsius, celsiusDelta, seconds } from '../../../../core/units.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** The schedule's top is 1215 °C. */
const peakedAt = (peakC: number) =>
  withTrace(facts(), { peakC: celsius(peakC), peakAtSeconds: seconds(650 * 60) });

describe('a peak that was not reached', () => {
  test('is told with what was planned and what was reached', () => {
    const finding = onlyFinding(peakNotReached, peakedAt(1190));
    expect(finding.figures).toEqual({ targetC: 1215, peakC: 1190, shortDeltaC: 25 });
    expect(finding.evidence).toEqual([
      { fromSeconds: 650 * 60, toSeconds: 650 * 60, celsius: 1190 },
    ]);
  });

  test.each([
    [1210, null],
    [1209.9, 'note'],
    [1207.1, 'note'],
    [1206.9, 'watch'],
  ])('at %d °C of 1215: %s', (peakC, severity) => {
    expect(judge(peakNotReached, peakedAt(peakC)).findings[0]?.severity ?? null).toBe(severity);
  });

  test('is to be acted on where the ware is certainly short of its cone', () => {
    const heatWork = heatWorkAt(4.9);
    expect(onlyFinding(peakNotReached, { ...peakedAt(1190), heatWork }).severity).toBe('act');
    expect(
      onlyFinding(peakNotReached, { ...peakedAt(1190), heatWork: heatWorkAt(7.5) }).severity,
    ).toBe('watch');
    const unsure = withConfidence({ ...peakedAt(1190), heatWork }, 0.4);
    expect(onlyFinding(peakNotReached, unsure).severity).toBe('watch');
  });

  test('is not told within three times the noise, or within the rounding', () => {
    const noisy = withTrace(peakedAt(1207), { noiseC: celsiusDelta(3) });
    expect(judge(peakNotReached, noisy)).toEqual(NOTHING);
    const rounded = withTrace(peakedAt(1207), { resolutionC: celsiusDelta(10) });
    expect(judge(peakNotReached, rounded)).toEqual(NOTHING);
  });
});

test('a climb that was broken off while brisk is told by ended-early alone', () => {
  const cut = firingFacts({ lastRamp: { minutes: 130, toC: 1150 }, topHold: null });
  expect(judge(peakNotReached, cut)).toEqual({ ...NOTHING, reason: 'told-by-another' });
  expect(judge(endedEarly, cut).outcome).toBe('found');
});

test('a climb that was giving out is told here, and its end is no finding of its own', () => {
  const gaveOut = firingFacts({ lastRamp: { minutes: 300, toC: 1150 }, topHold: null });
  expect(judge(peakNotReached, gaveOut).outcome).toBe('found');
  expect(judge(endedEarly, gaveOut)).toEqual({ ...NOTHING, reason: 'told-by-another' });
});

test('no unreached peak where it was reached, or passed', () => {
  expect(judge(peakNotReached, facts())).toEqual(NOTHING);
  expect(judge(peakNotReached, peakedAt(1260))).toEqual(NOTHING);
});

describe('cannot be judged', () => {
  test('without a schedule', () => {
    expect(judge(peakNotReached, withoutSchedule())).toEqual(inapplicable('no-schedule'));
  });

  test('where the record has a hole at its hottest reading', () => {
    const hole = { fromSeconds: seconds(650 * 60), toSeconds: seconds(690 * 60) };
    const gap = withTrace(peakedAt(1190), { gaps: [hole] });
    expect(judge(peakNotReached, gap)).toEqual(inapplicable('gap-at-peak'));
    const open = withTrace(peakedAt(1190), { noReadings: [hole] });
    expect(judge(peakNotReached, open)).toEqual(inapplicable('gap-at-peak'));
    const elsewhere = { fromSeconds: seconds(0), toSeconds: seconds(600 * 60) };
    expect(judge(peakNotReached, withTrace(peakedAt(1190), { gaps: [elsewhere] })).outcome).toBe(
      'found',
    );
  });

  test('where the record stops on the climb', () => {
    const climbing = firingFacts({
      lastRamp: { minutes: 65, toC: 1085, verdict: 'not-reached' },
      topHold: null,
      cooling: null,
    });
    expect(judge(peakNotReached, climbing)).toEqual(inapplicable('record-ends-hot'));
    const past = firingFacts({
      lastRamp: { minutes: 65, toC: 1085, verdict: 'not-reached' },
      topHold: null,
      cooling: { minutes: 10, toC: 1070 },
    });
    expect(judge(peakNotReached, withTrace(past, { offSeconds: null })).outcome).toBe('found');
  });
});
