import { describe, expect, test } from 'vitest';
import { endedEarly } from '../../../../core/findings/detectors/ended-early.ts';
import {
  facts,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  withoutSchedule,
} from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';
import { celsius, seconds } from '../../../../core/units.ts';

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

  test('is told from ten minutes of the schedule on', () => {
    // A climb broken off 6 °C below its target has 6 of its 195 minutes left.
    const short = { toC: 1209, verdict: 'not-reached' } as const;
    const left = (minutes: number) =>
      judge(endedEarly, firingFacts({ lastRamp: short, topHold: { minutes, toC: 1209 } }));
    expect(left(15).outcome).toBe('clear');
    const stopped = firingFacts({ lastRamp: short, topHold: null });
    expect(onlyFinding(endedEarly, stopped).figures.leftMinutes).toBeCloseTo(6 + 15, 9);
  });

  test('leaves a cut that took nothing but the last hold to hold-short', () => {
    expect(judge(endedEarly, firingFacts({ topHold: null }))).toEqual(NOTHING);
    expect(judge(endedEarly, firingFacts({ topHold: { minutes: 1 } }))).toEqual(NOTHING);
  });

  test('is told at one place: where its last leg ended, never hotter than any reading', () => {
    const apart = withTrace(brokenOff, {
      offSeconds: seconds(500 * 60),
      peakC: celsius(1083.5),
    });
    expect(onlyFinding(endedEarly, apart).evidence).toEqual([
      { fromSeconds: 515 * 60, toSeconds: 515 * 60, celsius: 1083.5 },
    ]);
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
    const segments = [
      ...base.schedule!.segments,
      { ...base.schedule!.segments[2]!, targetC: celsius(900) },
    ];
    const schedule = { ...base.schedule!, segments };
    const alignment = { ...base.alignment!, legs };
    const uncooled = { ...base, schedule, alignment };
    expect(onlyFinding(endedEarly, { ...uncooled, heatWork: heatWorkAt(4) }).severity).toBe(
      'watch',
    );
    // Nor is it a note because noise has it that the hold before lacked half a minute.
    const noisy = legs.map((leg, i) =>
      i === 4 ? { ...leg, actual: { ...leg.actual!, endSeconds: seconds(659.5 * 60) } } : leg,
    );
    const lacking = { ...uncooled, alignment: { ...alignment, legs: noisy } };
    expect(onlyFinding(endedEarly, { ...lacking, heatWork: heatWorkAt(6) }).severity).toBe('watch');
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
