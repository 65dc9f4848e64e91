import { expect, test } from 'vitest';
import { coneKinetics } from '../../../core/cones/cone-kinetics.ts';
import { placeOf } from '../../../core/heatwork/place.ts';

test('a place is a position, and one cone less than the coolest where no cone is down', () => {
  const cones = coneKinetics('self-supporting');
  const upTo = (position: number) => cones.map((cone) => Math.exp(position - cone.position));
  expect(placeOf(cones, upTo(3.5))).toBeCloseTo(3.5, 10);
  expect(placeOf(cones, upTo(-25))).toBe(cones[0]!.position - 1);
});
