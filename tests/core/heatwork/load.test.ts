import { describe, expect, test } from 'vitest';
import { loadOf } from '../../../core/heatwork/load.ts';
import type { Cone } from '../../../core/model/cone.ts';
import { firing } from '../../builders/trace.ts';
import { cone6, measure, ramp } from './measuring.ts';

const loadFor = (points: Parameters<typeof measure>[0], target: Cone | null) =>
  loadOf(measure(points, { target }));

describe('the load', () => {
  test('is as meant within half a cone', () => {
    expect(loadFor(cone6(1210), '6')).toEqual({ state: 'as-meant', refireTo: null });
  });

  test('is short where even the hot end of the range misses the cone; refire to it', () => {
    expect(loadFor(cone6(1100), '6')).toEqual({ state: 'short', refireTo: '6' });
  });

  test('is beyond where even the cold end passes it', () => {
    expect(loadFor(cone6(1250), '6')).toEqual({ state: 'beyond', refireTo: null });
  });

  test('cannot be told where the range reaches to both sides of the cone', () => {
    const fired = measure(cone6(1192), { target: '6' });
    expect(fired.target!.verdict).toBe('under');
    // Short by more than half a cone in the middle, but the couple alone may explain it.
    const wide = { ...fired, cone: { ...fired.cone, highPosition: 6.1 } };
    expect(loadOf(wide).state).toBe('cannot-tell');
    expect(loadOf({ ...fired, cone: { ...fired.cone, highPosition: 5.9 } }).state).toBe('short');
  });

  test('cannot be told without a target, or from a record that ends before the top', () => {
    expect(loadFor(cone6(), null)).toEqual({ state: 'cannot-tell', refireTo: null });
    expect(loadOf(null)).toEqual({ state: 'cannot-tell', refireTo: null });
    expect(loadFor(firing(20, ramp(60, 1100)), '6').state).toBe('cannot-tell');
    expect(loadFor(firing(20, ramp(60, 1214)), '6').state).toBe('cannot-tell');
  });

  test('is short where the firing stopped before its schedule, even without a target', () => {
    expect(loadOf(measure(cone6(900)), { endedEarly: true }).state).toBe('short');
    expect(loadOf(null, { endedEarly: true })).toEqual({ state: 'short', refireTo: null });
  });

  test('is fired again one cone cooler where it already has most of the heat-work', () => {
    // With 0.43 of cone 6 already there, cone 6 again would pass it by more than half a cone.
    const fired = measure(cone6(1194), {
      target: '6',
      couple: { type: 'S', class: 'class-1' },
    });
    const load = loadOf(fired);
    expect(load.state).toBe('short');
    expect(load.refireTo).toBe('5.5');
  });
});
