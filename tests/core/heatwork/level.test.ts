import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coneKinetics } from '../../../core/cones/cone-kinetics.ts';
import { standingOf } from '../../../core/cones/position.ts';
import { aboveLevel, levelAt } from '../../../core/heatwork/level.ts';

const cones = coneKinetics('self-supporting');

describe('a level', () => {
  test('is passed exactly where the position is', () => {
    const place = fc.double({ min: -20.9, max: 13.9, noNaN: true });
    fc.assert(
      fc.property(place, place, (goal, at) => {
        fc.pre(Math.abs(goal - at) > 1e-6);
        const doses = new Map(cones.map((cone) => [cone, Math.exp(0.7 * (at - cone.position))]));
        const above = aboveLevel(levelAt(cones, goal)!, (cone) => doses.get(cone)!);
        const { position } = standingOf(cones, [...doses.values()]);
        expect(above > 0).toBe(position! > goal);
      }),
    );
  });

  test('is one cone’s own dose at a cone', () => {
    const level = levelAt(cones, 6)!;
    expect(level.cooler.cone).toBe('6');
    expect(aboveLevel(level, () => 1)).toBe(0);
  });

  test('does not exist outside the cones', () => {
    expect(levelAt(cones, -21.5)).toBeNull();
    expect(levelAt(cones, 14.5)).toBeNull();
  });
});
