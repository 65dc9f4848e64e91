import { describe, expect, it } from 'vitest';
import { coneTip } from '../../../core/report/chart/cone-shape.ts';
import { FORM } from '../../../renderer/cones/drawn-cone.tsx';
import {
  bendByKey,
  bendTowards,
  bendWords,
  DOWN_DEGREES,
  MOST_BENT_DEGREES,
} from '../../../renderer/told/bend.ts';

describe('bendTowards', () => {
  it('finds the bend whose drawn tip is where the pointer is', () => {
    for (let bend = 0; bend <= MOST_BENT_DEGREES; bend += 5) {
      const [x, y] = coneTip(FORM, bend);
      // The drawing is a round bow of 24 pieces; a degree is finer than any hand.
      expect(Math.abs(bendTowards(x - FORM.x, FORM.y - y) - bend)).toBeLessThanOrEqual(1);
    }
  });

  it('keeps to what can be seen: upright behind the cone, flat below it', () => {
    expect(bendTowards(-40, 30)).toBe(0);
    expect(bendTowards(10, -60)).toBe(MOST_BENT_DEGREES);
    expect(bendTowards(-10, -60)).toBe(MOST_BENT_DEGREES);
  });
});

describe('bendByKey', () => {
  it('goes by ones, by fifteens, and to the two ends that have a name', () => {
    expect(bendByKey('ArrowUp', 40)).toBe(41);
    expect(bendByKey('ArrowLeft', 40)).toBe(39);
    expect(bendByKey('PageUp', 40)).toBe(55);
    expect(bendByKey('PageDown', 10)).toBe(0);
    expect(bendByKey('Home', 40)).toBe(0);
    expect(bendByKey('End', 40)).toBe(DOWN_DEGREES);
    expect(bendByKey('ArrowUp', MOST_BENT_DEGREES)).toBe(MOST_BENT_DEGREES);
  });

  it('leaves other keys alone', () => {
    expect(bendByKey('Tab', 40)).toBeNull();
  });
});

describe('bendWords', () => {
  it('calls the stages by their names', () => {
    expect([0, 40, 90, 100].map(bendWords)).toEqual([
      'upright',
      'bent 40°',
      'down: tip level with its base',
      'past down, flat',
    ]);
  });
});
