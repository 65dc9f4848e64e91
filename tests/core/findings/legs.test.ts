import { describe, expect, test } from 'vitest';
import {
  coolsByItself,
  endUncertaintyMinutes,
  evidenceOf,
  isAfterPeak,
  isTop,
  lengthMinutes,
  ratedClimbs,
  topC,
  unfinished,
} from '../../../core/findings/legs.ts';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius, celsiusDelta, seconds } from '../../../core/units.ts';
import { SCHEDULE, facts, firingFacts, type Driven } from '../../builders/facts.ts';

const climbsOf = (driven: Driven, schedule: Schedule = SCHEDULE) =>
  ratedClimbs(schedule, firingFacts(driven).alignment!);

const replaced = (segment: number, change: Partial<Schedule['segments'][number]>): Schedule => ({
  ...SCHEDULE,
  segments: SCHEDULE.segments.map((own, i) => (i === segment ? { ...own, ...change } : own)),
});

describe('the climbs that had a rate to keep', () => {
  test('are held against the time that the climb they made takes at the planned rate', () => {
    // 195 °C at 60 °C/h take 195 min; in 260 min they are 45 °C/h.
    const last = climbsOf({ lastRamp: { minutes: 260 } })[2]!;
    expect(last.segment).toBe(2);
    expect(last.plannedCPerHour).toBeCloseTo(60, 9);
    expect(last.achievedCPerHour).toBeCloseTo(45, 9);
    expect(last.dueMinutes).toBeCloseTo(195, 9);
    expect(last.tookMinutes).toBeCloseTo(260, 9);
  });

  test('are held to no more than the climb they made, where the target was not reached', () => {
    // 1020 to 1170 is 150 °C, 150 min at 60 °C/h.
    const last = climbsOf({ lastRamp: { minutes: 200, toC: 1170 }, topHold: null })[2]!;
    expect(last.dueMinutes).toBeCloseTo(150, 9);
  });

  test('leave out what never ran, what ran at full power, and what hardly climbed', () => {
    expect(climbsOf({})).toHaveLength(3);
    expect(climbsOf({ middleRamp: null }).map(({ segment }) => segment)).toEqual([0, 2]);
    const full = replaced(1, { rateCPerHour: 'full' });
    expect(climbsOf({}, full).map(({ segment }) => segment)).toEqual([0, 2]);
    expect(climbsOf({ firstRamp: { toC: 39 } }).map(({ segment }) => segment)).toEqual([1, 2]);
  });

  test('take the rate of a segment given in minutes from its planned course', () => {
    const { alignment } = facts();
    const legs = alignment!.legs.map((leg) => ({
      ...leg,
      planned: { ...leg.planned, rateCPerHour: null },
    }));
    const timed = replaced(1, { rateCPerHour: null, minutes: 360 });
    expect(ratedClimbs(timed, { ...alignment!, legs })[1]!.plannedCPerHour).toBeCloseTo(150, 9);
  });
});

test('the end of a climb is known to one reading and the crossing of its noise', () => {
  const { trace } = facts();
  const at = (noiseC: number, resolutionC: number, everySeconds: number) =>
    endUncertaintyMinutes(
      {
        ...trace,
        noiseC: celsiusDelta(noiseC),
        resolutionC: celsiusDelta(resolutionC),
        medianIntervalSeconds: seconds(everySeconds),
      },
      60,
    );
  // At 60 °C/h a degree is crossed in a minute.
  expect(at(1, 0.1, 60)).toBeCloseTo(1 + 2, 9);
  expect(at(0.1, 5, 120)).toBeCloseTo(2 + 5, 9);
});

test('the top of a schedule is its hottest target, wherever it stands', () => {
  const cooled = {
    ...SCHEDULE,
    segments: [...SCHEDULE.segments, { ...SCHEDULE.segments[0]!, targetC: celsius(900) }],
  };
  expect(topC(cooled)).toBe(1215);
  expect([0, 1, 2, 3, 9].map((segment) => isTop(cooled, segment))).toEqual([
    false,
    false,
    true,
    false,
    false,
  ]);
  expect([1, 2, 3].map((segment) => isAfterPeak(cooled, segment))).toEqual([false, false, true]);
});

test('the kiln cools by itself where a leg of no segment was found', () => {
  expect(coolsByItself(facts().alignment!)).toBe(true);
  expect(coolsByItself(firingFacts({ cooling: null }).alignment!)).toBe(false);
});

test('a leg is shown over its whole course, at its middle temperature', () => {
  const { actual } = facts().alignment!.legs[3]!;
  expect(lengthMinutes(actual!)).toBe(195);
  expect(evidenceOf(actual!)).toEqual({
    fromSeconds: 450 * 60,
    toSeconds: 645 * 60,
    celsius: (1020 + 1215) / 2,
  });
});

describe('what of a schedule had not run', () => {
  const of = (driven: Driven) => unfinished(firingFacts(driven).alignment!);

  test('is nothing when all ran, or a climb ended within 5 °C of its target', () => {
    expect(of({})).toMatchObject({ minutes: 0, legs: [], endedC: 1215 });
    expect(of({ lastRamp: { toC: 1210.1 }, topHold: null }).minutes).toBe(15);
  });

  test('is the rest of the last leg and the legs after it', () => {
    const left = of({ lastRamp: { minutes: 65, toC: 1085 }, topHold: null });
    expect(left.minutes).toBeCloseTo(130 + 15, 9);
    expect(left.legs.map(({ kind }) => kind)).toEqual(['ramp', 'hold']);
    expect(left.endedC).toBe(1085);
    expect(of({ topHold: { minutes: 4 } }).minutes).toBeCloseTo(11, 9);
  });

  test('does not count what was passed over before', () => {
    expect(of({ firstRamp: null, dryingHold: null }).minutes).toBe(0);
  });

  test('is all of it where no leg was found', () => {
    const none = of({
      ...{ firstRamp: null, dryingHold: null, middleRamp: null, lastRamp: null, topHold: null },
    });
    expect(none.minutes).toBe(60 + 30 + 360 + 195 + 15);
    expect(none.endedC).toBeNull();
  });
});
