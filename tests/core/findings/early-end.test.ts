import { expect, test } from 'vitest';
import { LEFT_MINUTES, endsEarly, wasGivingOut } from '../../../core/findings/early-end.ts';
import { firingFacts, type Driven } from '../../builders/facts.ts';

const of = (driven: Driven) => {
  const { alignment, trace } = firingFacts(driven);
  return endsEarly(alignment!, trace);
};

test('an early end is what was left from ten minutes on, where the cooling was logged', () => {
  expect(of({})).toBeNull();
  // 1.5 min per 1.5 °C left of the climb, and the hold.
  const left = of({ lastRamp: { toC: 1200 }, topHold: null });
  expect(left?.minutes).toBeCloseTo(15 + 15, 9);
  expect(left?.minutes).toBeGreaterThan(LEFT_MINUTES);
  expect(of({ lastRamp: { toC: 1200 }, topHold: null, cooling: null })).toBeNull();
});

test('of nothing but the last hold it is none: that is a short hold', () => {
  expect(of({ topHold: null })).toBeNull();
  expect(of({ topHold: { minutes: 1 } })).toBeNull();
});

const gaveOut = (driven: Driven) => {
  const { alignment, samples } = firingFacts(driven);
  return wasGivingOut(alignment!, samples);
};

test('a climb that makes less than 0.7 of its rate at its end was giving out', () => {
  const to = (minutes: number) => gaveOut({ lastRamp: { minutes, toC: 1150 }, topHold: null });
  // 130 °C, planned at 60 °C/h.
  expect(to(130)).toBe(false);
  expect(to(180)).toBe(false);
  expect(to(190)).toBe(true);
});

test('a hold that was cut gave out nothing', () => {
  expect(gaveOut({ topHold: { minutes: 2 } })).toBe(false);
});
