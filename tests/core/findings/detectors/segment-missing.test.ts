import { describe, expect, test } from 'vitest';
import { segmentMissing } from '../../../../core/findings/detectors/segment-missing.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { celsius, celsiusPerHour, seconds } from '../../../../core/units.ts';

const withoutFirst = firingFacts({ firstRamp: null, dryingHold: null });
const withoutMiddle = firingFacts({ middleRamp: null });

describe('a segment that was passed over', () => {
  test('is told with the time it was to take, its hold included, and marked where it was due', () => {
    const finding = onlyFinding(segmentMissing, withoutFirst);
    expect(finding.severity).toBe('watch');
    expect(finding.figures).toEqual({ segment: 0, plannedMinutes: 90, targetC: 120 });
    expect(finding.evidence).toEqual([{ fromSeconds: 0, toSeconds: 0, celsius: 20 }]);
    expect(onlyFinding(segmentMissing, withoutMiddle).evidence).toEqual([
      { fromSeconds: 90 * 60, toSeconds: 90 * 60, celsius: 120 },
    ]);
  });

  test('is to be acted on near the top, where the heat-work missed its cone', () => {
    const heatWork = heatWorkAt(4.5);
    // The middle ramp ends at 1020, 195 °C below the top; 150 °C below it of 1170.
    expect(onlyFinding(segmentMissing, { ...withoutMiddle, heatWork }).severity).toBe('watch');
    const segments = withoutMiddle.schedule!.segments.map((own, i) =>
      i === 2 ? { ...own, targetC: celsius(1170) } : own,
    );
    const schedule = { ...withoutMiddle.schedule!, segments };
    const nearTop = { ...withoutMiddle, schedule, heatWork };
    expect(onlyFinding(segmentMissing, nearTop).severity).toBe('act');
    const unsure = withConfidence(nearTop, 0.4);
    expect(onlyFinding(segmentMissing, unsure).severity).toBe('watch');
  });
});

describe('a segment that the kiln went through at the next one’s rate', () => {
  /** The middle ramp of 900 °C at the last ramp’s 60 °C/h, though another rate was planned. */
  const atNextRate = (factor: number, ownCPerHour = 40) => {
    const base = firingFacts({ middleRamp: { minutes: 900 / factor } });
    const legs = base.alignment!.legs.map((leg, i) =>
      i === 2
        ? { ...leg, planned: { ...leg.planned, rateCPerHour: celsiusPerHour(ownCPerHour) } }
        : leg,
    );
    return { ...base, alignment: { ...base.alignment!, legs } };
  };

  test('is told, and marked over its whole climb', () => {
    const finding = onlyFinding(segmentMissing, atNextRate(1));
    expect(finding.figures).toMatchObject({ segment: 1, targetC: 1020 });
    expect(finding.figures.plannedMinutes).toBeCloseTo(360, 9);
    expect(finding.evidence[0]).toMatchObject({ fromSeconds: 90 * 60, toSeconds: 990 * 60 });
  });

  test.each([
    [0.94, 'clear'],
    [0.96, 'found'],
    [1.04, 'found'],
    [1.06, 'clear'],
  ])('is told at %d times that rate: %s', (factor, outcome) => {
    expect(judge(segmentMissing, atNextRate(factor)).outcome).toBe(outcome);
  });

  test('is not told where it stopped between, or its own rate is as near', () => {
    // The first ramp, 100 °C at 150 °C/h: the hold after it was kept, or was not.
    const first = { minutes: 40 };
    expect(judge(segmentMissing, firingFacts({ firstRamp: first }))).toEqual(NOTHING);
    const unheld = firingFacts({ firstRamp: first, dryingHold: null });
    expect(onlyFinding(segmentMissing, unheld).figures.segment).toBe(0);
    const near = atNextRate(1, 55);
    expect(judge(segmentMissing, near)).toEqual(NOTHING);
  });
});

describe('no segment missing', () => {
  test('where the climb was slower than its own rate: that is told with its delay', () => {
    expect(judge(segmentMissing, firingFacts({ middleRamp: { minutes: 900 } }))).toEqual(NOTHING);
  });

  test('where the record begins hotter than the segment ends', () => {
    const hot = withTrace(firingFacts({ firstRamp: null, dryingHold: null }), {
      startSeconds: null,
    });
    const legs = hot.alignment!.legs.map((leg, i) =>
      i === 2 ? { ...leg, actual: { ...leg.actual!, startC: celsius(573) } } : leg,
    );
    const begun = { ...hot, alignment: { ...hot.alignment!, legs } };
    expect(judge(segmentMissing, begun)).toEqual(NOTHING);
    // At 119 °C the kiln still had to pass 120 °C.
    const cool = legs.map((leg, i) =>
      i === 2 ? { ...leg, actual: { ...leg.actual!, startC: celsius(119) } } : leg,
    );
    const seen = { ...hot, alignment: { ...hot.alignment!, legs: cool } };
    expect(judge(segmentMissing, seen).outcome).toBe('found');
  });

  test('where all ran', () => {
    expect(judge(segmentMissing, facts())).toEqual(NOTHING);
  });

  test('where nothing came after it: that is a firing that ended', () => {
    expect(judge(segmentMissing, firingFacts({ lastRamp: null, topHold: null }))).toEqual(NOTHING);
  });

  test('where it was to take too little time to be seen', () => {
    // Ninety minutes are fewer than three readings an hour apart.
    const coarse = withTrace(withoutFirst, { medianIntervalSeconds: seconds(1801) });
    expect(judge(segmentMissing, coarse)).toEqual(NOTHING);
    const fine = withTrace(withoutFirst, { medianIntervalSeconds: seconds(1799) });
    expect(judge(segmentMissing, fine).outcome).toBe('found');
  });
});

test('cannot be judged without a schedule', () => {
  expect(judge(segmentMissing, withoutSchedule())).toEqual(inapplicable('no-schedule'));
});
