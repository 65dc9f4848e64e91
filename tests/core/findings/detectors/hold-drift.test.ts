import { describe, expect, test } from 'vitest';
import { holdDrift } from '../../../../core/findings/detectors/hold-drift.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { celsiusDelta, seconds } from '../../../../core/units.ts';

/** Both ends of a hold moved by the same amount: a level that was kept, but not the one planned. */
const topOff = (offC: number): Facts =>
  firingFacts({ lastRamp: { toC: 1215 + offC }, topHold: { toC: 1215 + offC } });

/** A drying hold that drifts in a straight line from its level. */
const dryingDrift = (driftC: number): Facts => firingFacts({ dryingHold: { toC: 120 + driftC } });

describe('a hold that did not keep its level', () => {
  test('is told by how far its middle was off', () => {
    const finding = onlyFinding(holdDrift, topOff(-9));
    expect(finding.figures).toMatchObject({ segment: 2, levelC: 1215 });
    expect(finding.figures.offDeltaC).toBeCloseTo(-9, 9);
    expect(finding.evidence).toEqual([
      { fromSeconds: 645 * 60, toSeconds: 660 * 60, celsius: 1206 },
    ]);
  });

  test.each([
    [4.9, null],
    [-4.9, null],
    [5.1, 'note'],
    [-5.1, 'note'],
    [7.9, 'note'],
    [8.1, 'watch'],
    [-8.1, 'watch'],
  ])('by %d °C: %s', (offC, severity) => {
    expect(judge(holdDrift, topOff(offC)).findings[0]?.severity ?? null).toBe(severity);
  });

  test.each([
    // Of 30 min the middle 18 count, and of their readings nine tenths: 51 % of a straight drift.
    [9.6, null],
    [-9.6, null],
    [10, 'note'],
    [15.5, 'note'],
    [16, 'watch'],
    [-16, 'watch'],
  ])('wandering by %d °C: %s', (driftC, severity) => {
    expect(judge(holdDrift, dryingDrift(driftC)).findings[0]?.severity ?? null).toBe(severity);
  });

  test('is told of one that stood hot, whatever became of its segment’s other leg', () => {
    const beside = (offC: number): Facts =>
      firingFacts({
        lastRamp: { toC: 1215 + offC, verdict: 'not-reached' },
        topHold: { toC: 1215 + offC },
      });
    expect(onlyFinding(holdDrift, beside(12)).figures.offDeltaC).toBeCloseTo(12, 9);
    expect(judge(holdDrift, beside(-12)).findings).toEqual([]);
  });

  test('has no time to wander in less than twenty minutes', () => {
    const short = firingFacts({ dryingHold: { minutes: 19, toC: 129.9 } });
    expect(judge(holdDrift, short)).toEqual(NOTHING);
    expect(judge(holdDrift, dryingDrift(10)).outcome).toBe('found');
  });

  test('ends at the latest when the heat went off', () => {
    // The boundary laid ten minutes into the cooling would move the middle of the hold.
    const base = facts();
    const legs = base.alignment!.legs.map((leg, i) =>
      i === 4 ? { ...leg, actual: { ...leg.actual!, endSeconds: seconds(680 * 60) } } : leg,
    );
    const laidLate = { ...base, alignment: { ...base.alignment!, legs } };
    expect(judge(holdDrift, laidLate)).toEqual(NOTHING);
    expect(judge(holdDrift, withTrace(laidLate, { offSeconds: null })).outcome).toBe('found');
  });

  test('is to be acted on at the top where the heat-work missed its cone', () => {
    const heatWork = heatWorkAt(7.6);
    expect(onlyFinding(holdDrift, { ...topOff(12), heatWork }).severity).toBe('act');
    expect(onlyFinding(holdDrift, { ...dryingDrift(20), heatWork }).severity).toBe('watch');
    expect(onlyFinding(holdDrift, topOff(12)).severity).toBe('watch');
  });

  test('is not told within three times the noise, or within the rounding', () => {
    const noisy = withTrace(topOff(7), { noiseC: celsiusDelta(2.5) });
    expect(judge(holdDrift, noisy)).toEqual(NOTHING);
    const rounded = withTrace(topOff(9), { resolutionC: celsiusDelta(10) });
    expect(judge(holdDrift, rounded)).toEqual(NOTHING);
  });

  test('asks for no action on an alignment of little confidence', () => {
    const unsure = withConfidence({ ...topOff(12), heatWork: heatWorkAt(7.6) }, 0.4);
    expect(onlyFinding(holdDrift, unsure).severity).toBe('watch');
  });
});

test('a hold through which the kiln heated on is told of by its overshoot', () => {
  const base = firingFacts({
    topHold: { toC: 1254, minutes: 15 },
    dryingHold: null,
    firstRamp: { minutes: 90 },
  });
  const climbs = base.alignment!.legs.find(
    ({ segment, kind }) => segment === 2 && kind === 'ramp',
  )!;
  const past = (minutes: number): Facts => ({
    ...base,
    overshoots: [
      {
        segment: 2,
        overC: celsiusDelta(39),
        atSeconds: seconds(climbs.actual!.endSeconds + minutes * 60),
        aboveForSeconds: seconds(1200),
      },
    ],
  });
  expect(judge(holdDrift, past(15))).toEqual({
    outcome: 'clear',
    reason: 'told-by-another',
    findings: [],
  });
  // Risen slowly, as a controller that is tuned badly lets it.
  expect(onlyFinding(holdDrift, past(120)).figures.segment).toBe(2);
});

test('no drift where the holds kept their levels', () => {
  expect(judge(holdDrift, facts())).toEqual(NOTHING);
});

describe('cannot be judged', () => {
  test('without a schedule', () => {
    expect(judge(holdDrift, withoutSchedule())).toEqual(inapplicable('no-schedule'));
  });

  test('where no hold was reached', () => {
    const unreached = firingFacts({
      firstRamp: { toC: 100, verdict: 'not-reached' },
      dryingHold: { toC: 100 },
      lastRamp: { toC: 1190, verdict: 'not-reached' },
      topHold: { toC: 1190 },
    });
    expect(judge(holdDrift, unreached)).toEqual(inapplicable('no-hold'));
  });

  test('where the holds are shorter than their ends are certain', () => {
    const brief = firingFacts({ dryingHold: { minutes: 9 }, topHold: { minutes: 9 } });
    expect(judge(holdDrift, brief)).toEqual(inapplicable('no-hold'));
  });

  test('where too few readings fall into the holds', () => {
    const coarse = firingFacts({}, { intervalSeconds: 900 });
    expect(judge(holdDrift, coarse)).toEqual(inapplicable('readings-too-coarse'));
  });
});
