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
import { seconds } from '../../../../core/units.ts';

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
    // The middle ramp ends at 1020, 195 °C below the top; moved up, it ends 95 °C below.
    expect(onlyFinding(segmentMissing, { ...withoutMiddle, heatWork }).severity).toBe('watch');
    const segments = withoutMiddle.schedule!.segments.map((own, i) =>
      i === 1 ? { ...own, targetC: 1120 as never } : own,
    );
    const schedule = { ...withoutMiddle.schedule!, segments };
    expect(onlyFinding(segmentMissing, { ...withoutMiddle, schedule, heatWork }).severity).toBe(
      'act',
    );
    const unsure = withConfidence({ ...withoutMiddle, schedule, heatWork }, 0.4);
    expect(onlyFinding(segmentMissing, unsure).severity).toBe('watch');
  });
});

describe('no segment missing', () => {
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
