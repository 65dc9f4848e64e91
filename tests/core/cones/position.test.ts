import { describe, expect, test } from 'vitest';
import { endPoint } from '../../../core/cones/arrhenius.ts';
import { coneKinetics } from '../../../core/cones/cone-kinetics.ts';
import { occupancyOf } from '../../../core/cones/occupancy.ts';
import { standingAt, standingOf } from '../../../core/cones/position.ts';
import { CONES, positionOfCone } from '../../../core/model/cone.ts';
import { SELF_SUPPORTING_END_POINTS } from '../../../core/reference/end-points-self-supporting.ts';
import { celsiusPerHour } from '../../../core/units.ts';
import { curveFrom, firing } from '../../builders/trace.ts';
import { cellsOf } from '../reference/shared-reference.ts';

const cones = coneKinetics('self-supporting');

/** Climbs at a constant rate to a temperature and then falls away fast. */
const climbTo = (toC: number, rateCPerHour: number) =>
  standingAt(
    cones,
    occupancyOf(curveFrom(firing(20, { rateCPerHour, toC }, { rateCPerHour: 1e6, toC: 20 }))),
  );

describe('the position', () => {
  const charted = cellsOf(SELF_SUPPORTING_END_POINTS).filter(
    ({ cone, rateCPerHour }) => cone !== '022' && rateCPerHour !== 15,
  );

  test.each(charted.map((cell) => [cell.cone, cell.rateCPerHour, cell.endPointC] as const))(
    'of a climb to the end point of cone %s at %d °C/h is within 0.3 of it (chart of 2016)',
    (name, rate, endPointC) => {
      const cone = CONES.find((known) => known === name)!;
      const { position } = climbTo(endPointC, rate);
      expect(Math.abs(position! - positionOfCone(cone))).toBeLessThan(0.3);
    },
  );

  test('is the cone’s own where its dose is exactly reached', () => {
    const cone6 = cones[CONES.indexOf('6')]!;
    const { position, label } = climbTo(endPoint(cone6, celsiusPerHour(60)) + 0.01, 60);
    expect(label).toBe('6');
    expect(position).toBeCloseTo(6, 2);
    expect(climbTo(endPoint(cone6, celsiusPerHour(60)) - 0.1, 60).label).toBe('5.5');
  });

  test('interpolates in ln(dose), half cones at their half', () => {
    const doses = cones.map(({ position }) => Math.exp(5.25 - position));
    expect(standingOf(cones, doses)).toEqual({ label: '5', position: 5.25, beyond: false });
  });

  test('is unknown below the coolest cone', () => {
    expect(climbTo(500, 60)).toEqual({ label: null, position: null, beyond: false });
  });

  test('stops at the hottest cone and says so', () => {
    expect(climbTo(1450, 60)).toEqual({ label: '14', position: 14, beyond: true });
  });

  test('counts the hotter of two cones that a very slow firing brings down out of order', () => {
    const doses = cones.map(({ cone, position }) =>
      cone === '1' ? 0.9 : Math.exp(2.5 - position),
    );
    expect(standingOf(cones, doses).label).toBe('2');
  });
});
