import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doseOfClimb, endPoint } from '../../../core/cones/arrhenius.ts';
import { coneKinetics, kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { standingOf } from '../../../core/cones/position.ts';
import { equivalentOf, marginOf, MARGIN_RATE } from '../../../core/heatwork/margins.ts';
import { celsius } from '../../../core/units.ts';

const cones = coneKinetics('self-supporting');
const climbTo = (atC: number) =>
  standingOf(
    cones,
    cones.map((kinetics) => doseOfClimb(kinetics, celsius(atC), MARGIN_RATE)),
  );

describe('the margin', () => {
  const six = kineticsOf('self-supporting', '6');

  test('is none at the end point, and °C of a 60 °C/h climb on either side of it', () => {
    expect(marginOf(six, 1)).toBeCloseTo(0, 6);
    for (const past of [-40, -5, 12]) {
      const dose = doseOfClimb(six, celsius(endPoint(six, MARGIN_RATE) + past), MARGIN_RATE);
      expect(marginOf(six, dose)).toBeCloseTo(past, 5);
    }
  });

  test('of no dose is not known', () => {
    expect(marginOf(six, 0)).toBeNull();
  });
});

describe('the equivalent end point', () => {
  test('of a climb at 60 °C/h is where it ended', () => {
    fc.assert(
      fc.property(fc.double({ min: 605, max: 1360, noNaN: true }), (atC) => {
        expect(equivalentOf(cones, climbTo(atC))).toBeCloseTo(atC, 5);
      }),
    );
  });

  test('is not known below the coolest cone and beyond the hottest', () => {
    expect(equivalentOf(cones, climbTo(500))).toBeNull();
    expect(equivalentOf(cones, climbTo(1450))).toBeNull();
  });
});
