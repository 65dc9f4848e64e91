import { describe, expect, test } from 'vitest';
import { endedEarly } from '../../../../core/findings/detectors/ended-early.ts';
import { holdShort } from '../../../../core/findings/detectors/hold-short.ts';
import { segmentMissing } from '../../../../core/findings/detectors/segment-missing.ts';
import type { Alignment } from '../../../../core/model/document.ts';
import { celsius, celsiusDelta, celsiusPerHour, seconds } from '../../../../core/units.ts';
import {
  SCHEDULE,
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** The drying hold is planned for 30 min, the top hold for 15. */
const dryingHold = (minutes: number) => firingFacts({ dryingHold: { minutes } });
const topHold = (minutes: number) => firingFacts({ topHold: { minutes } });

const HOLDS = { ofDrying: dryingHold, ofTop: topHold };

describe('a short hold', () => {
  test('is told with what was planned and what it lasted', () => {
    const { figures, evidence } = onlyFinding(holdShort, topHold(5));
    expect(figures).toMatchObject({ segment: 2, plannedMinutes: 15 });
    expect(figures.heldMinutes).toBeCloseTo(5, 0);
    expect(figures.shortMinutes).toBeCloseTo(10, 0);
    expect(figures.shortPercent).toBeCloseTo(67, -1);
    expect(evidence).toEqual([{ fromSeconds: 645 * 60, toSeconds: 650 * 60, celsius: 1215 }]);
  });

  test.each([
    // The readings scatter by half a degree: the ends of a hold are told to some half a minute.
    ['ofDrying', 27.6, null],
    ['ofDrying', 27, 'note'],
    // Beyond three minutes, which are a tenth of 30 too.
    ['ofDrying', 26.5, 'watch'],
    // 15 % of 15 min are 2.25 min, 20 % are 3 min.
    ['ofTop', 12.8, null],
    ['ofTop', 12.7, 'note'],
    ['ofTop', 11.9, 'watch'],
  ] as const)('%s for %d min: %s', (which, minutes, severity) => {
    const { findings } = judge(holdShort, HOLDS[which](minutes));
    expect(findings[0]?.severity ?? null).toBe(severity);
  });

  test('is not one that was spent hotter than its level', () => {
    const overFor = (minutes: number) => ({
      ...topHold(5),
      overshoots: [
        {
          segment: 2,
          overC: celsiusDelta(40),
          atSeconds: seconds(655 * 60),
          aboveForSeconds: seconds(minutes * 60),
        },
      ],
    });
    expect(judge(holdShort, overFor(11))).toEqual(NOTHING);
    expect(judge(holdShort, overFor(8)).outcome).toBe('found');
  });

  test('of a few minutes off a long hold is a note', () => {
    // 4 of 100 min: beyond the three minutes, and less than a tenth.
    const base = firingFacts({ dryingHold: { minutes: 96 } });
    const legs = base.alignment!.legs.map((leg, i) =>
      i === 1 ? { ...leg, planned: { ...leg.planned, endSeconds: seconds((60 + 100) * 60) } } : leg,
    );
    const slight = { ...base, alignment: { ...base.alignment!, legs } };
    expect(onlyFinding(holdShort, slight).severity).toBe('note');
  });

  test('that the readings are too far apart to see is a note', () => {
    // 3.5 min short in readings 3 min apart: within one and a half of them.
    const coarse = withTrace(topHold(11.5), { medianIntervalSeconds: seconds(180) });
    expect(onlyFinding(holdShort, coarse).severity).toBe('note');
    expect(onlyFinding(holdShort, topHold(11.5)).severity).toBe('watch');
  });

  test('after the peak is watched from half its time on', () => {
    const after = (minutes: number) => {
      const base = firingFacts({ dryingHold: { minutes } });
      // The same hold, of a schedule whose hottest target came before it.
      const segments = SCHEDULE.segments.map((own, i) => ({
        ...own,
        targetC: celsius(i === 0 ? 120 : 100),
      }));
      const first = { ...segments[0]!, targetC: celsius(1300) };
      const legs = base.alignment!.legs.map((leg) => ({
        ...leg,
        segment: leg.segment === null ? null : leg.segment + 1,
      }));
      return {
        ...base,
        schedule: { ...SCHEDULE, segments: [first, ...segments] },
        alignment: { ...base.alignment!, legs },
      };
    };
    expect(judge(holdShort, after(15.5)).findings[0]?.severity).toBe('note');
    expect(judge(holdShort, after(14)).findings[0]?.severity).toBe('watch');
  });

  test('is to be acted on where the top’s went with missed heat-work', () => {
    const heatWork = heatWorkAt(4.9);
    expect(onlyFinding(holdShort, { ...topHold(5), heatWork }).severity).toBe('act');
    expect(onlyFinding(holdShort, { ...dryingHold(5), heatWork }).severity).toBe('watch');
  });

  test('that never came, though the kiln arrived, lasted no time', () => {
    const { figures } = onlyFinding(holdShort, firingFacts({ topHold: null }));
    expect(figures.heldMinutes).toBeLessThanOrEqual(1);
  });

  test('that never came is seen where the alignment laid its leg over the peak', () => {
    const base = firingFacts({ topHold: null, cooling: { minutes: 200 } });
    const overPeak = {
      ...base.alignment!.legs[4]!.planned,
      startSeconds: seconds(640 * 60),
      endSeconds: seconds(650 * 60),
      rateCPerHour: celsiusPerHour(0),
    };
    const legs = base.alignment!.legs.map((leg, i) =>
      i === 4 ? { ...leg, actual: overPeak, verdict: 'short' as const } : leg,
    );
    const { figures } = onlyFinding(holdShort, {
      ...base,
      alignment: { ...base.alignment!, legs },
    });
    expect(figures.heldMinutes).toBeLessThan(2);
  });

  test('is not told of a hold whose boundary alone was laid late', () => {
    const base = topHold(15);
    const legs: Alignment['legs'] = base.alignment!.legs.map((leg, i) =>
      i === 4 ? { ...leg, actual: { ...leg.actual!, startSeconds: seconds(652 * 60) } } : leg,
    );
    const laidLate = { ...base, alignment: { ...base.alignment!, legs } };
    expect(judge(holdShort, laidLate)).toEqual(NOTHING);
  });

  test('asks for no action on an alignment of little confidence', () => {
    const unsure = withConfidence({ ...topHold(5), heatWork: heatWorkAt(4.9) }, 0.4);
    expect(onlyFinding(holdShort, unsure).severity).toBe('watch');
  });
});

test('no short hold where all lasted as planned, or longer', () => {
  expect(judge(holdShort, facts())).toEqual(NOTHING);
  expect(judge(holdShort, topHold(40))).toEqual(NOTHING);
});

describe('told only once', () => {
  test('not where the climb to it was cut as well: that is a firing that ended early', () => {
    const cut = firingFacts({ lastRamp: { toC: 1209 }, topHold: null });
    expect(judge(holdShort, cut)).toEqual(NOTHING);
    expect(judge(endedEarly, cut).outcome).toBe('found');
  });

  test('not where its segment was passed over at the next one’s rate', () => {
    const through = firingFacts({ firstRamp: { minutes: 40 }, dryingHold: null });
    expect(judge(segmentMissing, through).outcome).toBe('found');
    expect(judge(holdShort, through)).toEqual(NOTHING);
  });
});

describe('cannot be judged', () => {
  test('where a hold is shorter than four readings', () => {
    // The top's 15 min in readings of 5 min, and the drying hold's 30 as well in readings of 10.
    const every = (minutes: number) =>
      withTrace(topHold(1), { medianIntervalSeconds: seconds(minutes * 60) });
    expect(judge(holdShort, every(3)).outcome).toBe('found');
    expect(judge(holdShort, every(5))).toEqual(NOTHING);
    expect(judge(holdShort, every(10))).toEqual(inapplicable('readings-too-coarse'));
  });

  test('without a schedule', () => {
    expect(judge(holdShort, withoutSchedule())).toEqual(inapplicable('no-schedule'));
  });

  test('where the schedule has no hold, or the kiln never arrived at one', () => {
    const noHold = facts().alignment!.legs.filter(({ kind }) => kind !== 'hold');
    const alignment = { ...facts().alignment!, legs: noHold };
    const segments = SCHEDULE.segments.map((own) => ({ ...own, holdMinutes: 0 }));
    const schedule = { ...SCHEDULE, segments };
    expect(judge(holdShort, facts({ schedule, alignment }))).toEqual(inapplicable('no-hold'));
    const unreached = firingFacts({
      firstRamp: { toC: 100, verdict: 'not-reached' },
      dryingHold: null,
      lastRamp: { toC: 1180, verdict: 'not-reached' },
      topHold: null,
    });
    expect(judge(holdShort, unreached)).toEqual(inapplicable('no-hold'));
  });
});

describe('readings too far apart', () => {
  test('say nothing of how long a hold was', () => {
    const coarse = firingFacts(
      { topHold: { minutes: 5 }, dryingHold: null },
      { intervalSeconds: 600 },
    );
    expect(judge(holdShort, coarse)).toEqual(inapplicable('readings-too-coarse'));
  });
});
