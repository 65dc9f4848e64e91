import { describe, expect, it } from 'vitest';
import {
  CONES,
  coneBeside,
  parseCone,
  positionOfCone,
  printedCone,
  zCone,
  zConeType,
} from '../../../core/model/cone.ts';
import { SELF_SUPPORTING_END_POINTS } from '../../../core/reference/end-points-self-supporting.ts';

describe('the list of cones', () => {
  it('is that of the cone maker’s published chart, in its order', () => {
    expect([...CONES]).toEqual(SELF_SUPPORTING_END_POINTS.rows.map(([cone]) => cone));
  });

  it('keeps the leading zero: 06 and 6 are eleven cones apart', () => {
    expect(positionOfCone('6') - positionOfCone('06')).toBe(11);
    expect(zCone.safeParse('06').data).toBe('06');
    expect(zCone.safeParse(6).success).toBe(false);
    expect(zConeType.safeParse('giant').success).toBe(false);
  });
});

describe('positions', () => {
  it('rise along the list, by one from whole cone to whole cone', () => {
    const positions = CONES.map(positionOfCone);
    expect([...positions].sort((a, b) => a - b)).toEqual(positions);
    const whole = CONES.filter((cone) => !cone.includes('.')).map(positionOfCone);
    expect(whole.slice(1).map((position, index) => position - whole[index]!)).toEqual(
      whole.slice(1).map(() => 1),
    );
  });

  it('put the half cones half-way between their neighbours', () => {
    expect(positionOfCone('05.5')).toBe((positionOfCone('06') + positionOfCone('05')) / 2);
    expect(positionOfCone('5.5')).toBe((positionOfCone('5') + positionOfCone('6')) / 2);
  });
});

describe('cones as people write them', () => {
  it.each([
    ['06', '06'],
    ['^6', '6'],
    ['cone 6', '6'],
    ['Cone 04', '04'],
    ['Δ05½', '05.5'],
    ['▲10', '10'],
    ['5 1/2', '5.5'],
    ['05,5', '05.5'],
    [' 022 ', '022'],
  ])('%s is cone %s', (text, cone) => {
    expect(parseCone(text)).toBe(cone);
  });

  it.each(['', 'six', '0', '00', '023', '15', '6.5', '-6', '1222', 'cone'])(
    '“%s” is none',
    (text) => {
      expect(parseCone(text)).toBeNull();
    },
  );

  it('are printed so that they can be read again', () => {
    expect(printedCone('05.5')).toBe('05½');
    for (const cone of CONES) expect(parseCone(printedCone(cone))).toBe(cone);
  });
});

it('the cones beside a firing cone are its guide and its guard', () => {
  expect(coneBeside('6', -1)).toBe('5.5');
  expect(coneBeside('6', 1)).toBe('7');
  expect(coneBeside('01', 1)).toBe('1');
  expect(coneBeside('022', -1)).toBeNull();
  expect(coneBeside('14', 1)).toBeNull();
});
