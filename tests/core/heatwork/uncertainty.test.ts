import { describe, expect, test } from 'vitest';
import {
  bestErrorC,
  coupleError,
  positionRange,
  uncertaintyOf,
} from '../../../core/heatwork/uncertainty.ts';
import { dosesWith, standingWith } from '../../../core/heatwork/firing-record.ts';
import { marginOfBend } from '../../../core/heatwork/cone-bend.ts';
import { marginOf } from '../../../core/heatwork/margins.ts';
import type { Options, ObservedCone } from '../../../core/model/options.ts';
import { cone6, record } from './measuring.ts';

const rangeOf = (couple: Options['couple'], observed: readonly ObservedCone[] = []) => {
  const fired = record(cone6(1222), { couple });
  const uncertainty = uncertaintyOf(fired, observed);
  const { position } = standingWith(fired, bestErrorC(uncertainty));
  const { low, high } = positionRange(fired, uncertainty, position);
  return { low: low!, high: high!, position: position!, uncertainty, fired };
};

describe('the range of the position', () => {
  test('of ordinary type K alone is about half a cone at cone 6 (analysis document)', () => {
    const { low, high, position } = rangeOf(undefined);
    expect(position - low).toBeGreaterThan(0.35);
    expect(position - low).toBeLessThan(0.65);
    expect(high - position).toBeGreaterThan(0.35);
    expect(high - position).toBeLessThan(0.65);
  });

  test('narrows with the couple’s class', () => {
    const width = (couple: Options['couple']) => rangeOf(couple).high - rangeOf(couple).low;
    expect(width({ type: 'K', class: 'class-1' })).toBeLessThan(width(undefined));
    expect(width({ type: 'S', class: 'class-1' })).toBeLessThan(0.5);
  });

  test('narrows with witness cones, and the couple’s error is told', () => {
    const asRead = rangeOf(undefined);
    const observed: ObservedCone[] = [
      { cone: '6', place: 'middle', bendDegrees: 90 },
      { cone: '7', place: 'middle', bendDegrees: 15 },
    ];
    const seen = rangeOf(undefined, observed);
    expect(seen.high - seen.low).toBeLessThan((asRead.high - asRead.low) / 2);
    expect(Math.abs(seen.position - 6)).toBeLessThan(0.2);
    const { estimate, low, high } = coupleError(seen.uncertainty);
    expect(estimate).toBe(bestErrorC(seen.uncertainty));
    expect(low).toBeLessThan(estimate - 1.5);
    expect(high).toBeGreaterThan(estimate + 1.5);
  });

  test('finds a couple’s error from the cones that it really made', () => {
    // Read 20 °C too low: the ware got what the readings say 20 °C higher.
    const fired = record(cone6(1222), {}, { errorC: (trueC) => -20 * (trueC / 1222) });
    const truth = record(cone6(1222));
    const seven = truth.cones.findIndex(({ cone }) => cone === '7');
    const margin = marginOf(truth.cones[seven]!, dosesWith(truth, 0)[seven]!)!;
    const bendDegrees = Array.from({ length: 91 }, (_, bend) => bend).find(
      (bend) => marginOfBend(bend) >= margin,
    )!;
    expect(bendDegrees).toBeGreaterThan(20);
    const observed: ObservedCone[] = [
      { cone: '6', place: 'middle', bendDegrees: 100 },
      { cone: '7', place: 'middle', bendDegrees },
    ];
    const { estimate, low, high } = coupleError(uncertaintyOf(fired, observed));
    expect(Math.abs(estimate - -20)).toBeLessThan(5);
    expect(low).toBeLessThan(-20);
    expect(high).toBeGreaterThan(-20);
  });
});
