import { describe, expect, test } from 'vitest';
import { analyzeJoinedTraces } from '../../../core/analyze-joined.ts';
import { isCutByRecord, planRecord, unseenLeg } from '../../../core/model/unseen-legs.ts';
import { celsius, seconds } from '../../../core/units.ts';
import { firingFacts, type Driven } from '../../builders/facts.ts';
import { twoRuns } from '../../builders/runs.ts';

const SEEN = { startSeconds: seconds(0), offSeconds: seconds(39_600) };

/** The legs of a firing whose first recorded leg begins at `firstC`. */
const legsFrom = (driven: Driven, firstC: number) => {
  const { legs } = firingFacts(driven).alignment!;
  const first = legs.findIndex(({ actual }) => actual !== null);
  return legs.map((leg, i) =>
    i === first ? { ...leg, actual: { ...leg.actual!, startC: celsius(firstC) } } : leg,
  );
};

describe('a leg that the record cannot show', () => {
  const WITHOUT_FIRST = { firstRamp: null, dryingHold: null } as const;

  test('lies below the first reading of a record that begins hot', () => {
    const legs = legsFrom(WITHOUT_FIRST, 573);
    const hot = { ...SEEN, startSeconds: null };
    expect([0, 1, 2].map((i) => unseenLeg(legs, i, hot))).toEqual([
      'begins-hot',
      'begins-hot',
      null,
    ]);
    expect(unseenLeg(legs, 0, SEEN)).toBeNull();
    expect(unseenLeg(legsFrom(WITHOUT_FIRST, 119), 0, hot)).toBeNull();
  });

  test('comes after the end of a record that shows no cooling', () => {
    const legs = legsFrom({ topHold: null, cooling: null }, 20);
    const running = { ...SEEN, offSeconds: null };
    expect(unseenLeg(legs, 4, running)).toBe('record-ends');
    expect(unseenLeg(legs, 4, SEEN)).toBeNull();
    // A leg between others that ran was passed over, whatever comes after.
    expect(unseenLeg(legsFrom({ middleRamp: null, cooling: null }, 20), 2, running)).toBeNull();
  });

  test('is none where nothing was found at all, and none beyond the legs', () => {
    const none = legsFrom({}, 20).map((leg) => ({ ...leg, actual: null }));
    expect(unseenLeg(none, 0, { startSeconds: null, offSeconds: null })).toBeNull();
    expect(unseenLeg(none, 99, SEEN)).toBeNull();
  });
});

describe('a leg within which the record stops', () => {
  const legs = legsFrom({ topHold: null, cooling: null }, 20);
  const last = legs.findLastIndex(({ actual }) => actual !== null);
  const notReached = legs.with(last, { ...legs[last]!, verdict: 'not-reached' });

  test('is the last one found, where it had not arrived and no cooling is shown', () => {
    expect(isCutByRecord(notReached, last, { offSeconds: null })).toBe(true);
    expect(isCutByRecord(notReached, last - 1, { offSeconds: null })).toBe(false);
    expect(isCutByRecord(notReached, last + 1, { offSeconds: null })).toBe(false);
    expect(isCutByRecord(notReached, -1, { offSeconds: null })).toBe(false);
  });

  test('is none where the kiln cooled, or where the leg arrived', () => {
    expect(isCutByRecord(notReached, last, SEEN)).toBe(false);
    expect(isCutByRecord(legs, last, { offSeconds: null })).toBe(false);
  });
});

test('of two joined logs the plan was laid on the later one', () => {
  const { document } = analyzeJoinedTraces(...twoRuns());
  expect(planRecord(document).startSeconds).toBe(document.joined!.startSeconds);
  expect(document.trace.startSeconds).toBeLessThan(document.joined!.startSeconds!);
  expect(planRecord({ trace: document.trace })).toBe(document.trace);
});
