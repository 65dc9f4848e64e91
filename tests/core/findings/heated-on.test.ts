import { expect, test } from 'vitest';
import { heatedOn, ranAway } from '../../../core/findings/heated-on.ts';
import { celsiusDelta, seconds } from '../../../core/units.ts';
import { facts } from '../../builders/facts.ts';

/** The last climb arrives at 1215 °C after 645 min, at 60 °C/h. */
const after = (minutes: number, overC: number, segment = 2) =>
  heatedOn(facts().alignment!, {
    segment,
    overC: celsiusDelta(overC),
    atSeconds: seconds((645 + minutes) * 60),
    aboveForSeconds: seconds(1200),
  });

test('a kiln that climbs on faster than it came was heated on', () => {
  expect(after(12, 36)).toEqual({ climbedOnMinutes: 12, climbedOnCPerHour: 180 });
  expect(after(12, 11)).not.toBeNull();
});

test('a kiln that slows down from its target coasts', () => {
  expect(after(12, 10.5)).toBeNull();
  expect(after(30, 20)).toBeNull();
});

test('a climb of a few minutes or degrees is no heating on', () => {
  expect(after(7.9, 20)).toBeNull();
  expect(after(8, 20)).not.toBeNull();
  expect(after(9, 9.9)).toBeNull();
});

test('nothing is told of a climb that never ran', () => {
  expect(after(12, 36, 9)).toBeNull();
});

test('a kiln ran away from the target of the segment that is asked for, or from any', () => {
  const { alignment } = facts();
  const over = {
    segment: 2,
    overC: celsiusDelta(36),
    atSeconds: seconds(657 * 60),
    aboveForSeconds: seconds(1200),
  };
  expect(ranAway(alignment, [over])).toBe(true);
  expect(ranAway(alignment, [over], 2)).toBe(true);
  expect(ranAway(alignment, [over], 0)).toBe(false);
  expect(ranAway(alignment, [])).toBe(false);
  expect(ranAway(null, [over])).toBe(false);
});
