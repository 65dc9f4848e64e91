import { describe, expect, test } from 'vitest';
import { endedEarly } from '../../../../core/findings/detectors/ended-early.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** The power goes on the last ramp, a third of the way up. */
const brokenOff = firingFacts({
  lastRamp: { minutes: 65, toC: 1085, verdict: 'not-reached' },
  topHold: null,
});

describe('a firing that stopped before its schedule', () => {
  test('is told with the time that was left and the temperature at which it stopped', () => {
    const finding = onlyFinding(endedEarly, { ...brokenOff, heatWork: heatWorkAt(-2.5) });
    expect(finding.severity).toBe('act');
    // 130 of 195 min of the ramp, and the hold.
    expect(finding.figures.leftMinutes).toBeCloseTo(130 + 15, 9);
    expect(finding.figures.endedC).toBe(1085);
    expect(finding.evidence).toEqual([
      { fromSeconds: 515 * 60, toSeconds: 515 * 60, celsius: 1085 },
    ]);
  });

  test('is as grave as what it did to the heat-work', () => {
    expect(onlyFinding(endedEarly, { ...brokenOff, heatWork: heatWorkAt(6) }).severity).toBe(
      'note',
    );
    expect(onlyFinding(endedEarly, { ...brokenOff, heatWork: heatWorkAt(5.3) }).severity).toBe(
      'watch',
    );
    expect(onlyFinding(endedEarly, { ...brokenOff, heatWork: null }).severity).toBe('watch');
    const unsure = withConfidence({ ...brokenOff, heatWork: heatWorkAt(-2.5) }, 0.4);
    expect(onlyFinding(endedEarly, unsure).severity).toBe('watch');
  });

  test('is told of a hold broken off from ten minutes on', () => {
    expect(judge(endedEarly, firingFacts({ topHold: { minutes: 5.1 } }))).toEqual(NOTHING);
    expect(judge(endedEarly, firingFacts({ topHold: { minutes: 4.9 } })).outcome).toBe('found');
    expect(judge(endedEarly, firingFacts({ topHold: null })).outcome).toBe('found');
  });

  test('does not count a climb that ended within 5 °C of its target as unfinished', () => {
    const arrived = firingFacts({ lastRamp: { toC: 1210.1 }, topHold: { toC: 1210.1 } });
    expect(judge(endedEarly, arrived)).toEqual(NOTHING);
  });

  test('is never to be acted on where only controlled cooling was left out', () => {
    const base = facts();
    const down = { ...base.alignment!.legs[3]!, segment: 3, actual: null };
    const legs = base.alignment!.legs.flatMap((leg, i) =>
      i === 5
        ? [
            { ...down, planned: { ...down.planned, startC: 1215 as never, endC: 900 as never } },
            leg,
          ]
        : [leg],
    );
    const uncooled = { ...base, alignment: { ...base.alignment!, legs }, heatWork: heatWorkAt(4) };
    expect(onlyFinding(endedEarly, uncooled).severity).toBe('watch');
  });
});

test('no early end where the schedule ran through', () => {
  expect(judge(endedEarly, facts())).toEqual(NOTHING);
});

test('cannot be judged without a schedule, or where the record shows no cooling', () => {
  expect(judge(endedEarly, withoutSchedule())).toEqual(inapplicable('no-schedule'));
  const stopped = firingFacts({
    lastRamp: { minutes: 65, toC: 1085 },
    topHold: null,
    cooling: null,
  });
  expect(judge(endedEarly, stopped)).toEqual(inapplicable('no-cooling-logged'));
  // A fall that the alignment knows for the schedule's own is not the kiln's.
  const [last, ...before] = brokenOff.alignment!.legs.toReversed();
  const legs = [...before.toReversed(), { ...last!, actual: null }];
  const falling = { ...brokenOff, alignment: { ...brokenOff.alignment!, legs } };
  expect(judge(endedEarly, falling)).toEqual(inapplicable('no-cooling-logged'));
});
