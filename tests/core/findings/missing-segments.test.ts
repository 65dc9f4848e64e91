import { expect, test } from 'vitest';
import { missingSegments, shortestMinutes } from '../../../core/findings/missing-segments.ts';
import { seconds } from '../../../core/units.ts';
import { firingFacts, type Driven } from '../../builders/facts.ts';

const of = (driven: Driven) => {
  const { schedule, alignment, trace } = firingFacts(driven);
  return missingSegments(schedule!, alignment!, trace).map(({ segment }) => segment);
};

test('segments passed over are those between others that ran', () => {
  expect(of({})).toEqual([]);
  expect(of({ middleRamp: null })).toEqual([1]);
  expect(of({ lastRamp: null, topHold: null })).toEqual([]);
});

test('a segment must be long enough to show in the readings', () => {
  const { trace } = firingFacts();
  const every = (minutes: number) => ({ ...trace, medianIntervalSeconds: seconds(minutes * 60) });
  expect(shortestMinutes(every(1))).toBe(5);
  expect(shortestMinutes(every(10))).toBe(30);
});
