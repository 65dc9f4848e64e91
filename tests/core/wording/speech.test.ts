import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneAtLeast } from '../../../core/wording/speech.ts';
import { CONES, positionOfCone } from '../../../core/model/cone.ts';
import { celsius, celsiusDelta, celsiusPerHour } from '../../../core/units.ts';
import {
  clockTime,
  coneName,
  conePlace,
  coneRangeAbout,
  coneSteps,
  count,
  counted,
  duration,
  interval,
  moment,
  nearestCone,
  percent,
  plainNumber,
  speechIn,
} from '../../../core/wording/speech.ts';

describe('numbers', () => {
  it.each([
    [0, 0, '0'],
    [-0.2, 0, '0'],
    [-3.4, 0, '−3'],
    [12.3456, 2, '12.35'],
    [12.5, 2, '12.5'],
    [1_000_000, 0, '1000000'],
  ])('%d with %d decimals is %s', (value, digits, said) => {
    expect(plainNumber(value, digits)).toBe(said);
  });

  it.each([
    [3, '3'],
    [9999, '9999'],
    [10_000, '10\u00a0000'],
    [1_234_567, '1\u00a0234\u00a0567'],
  ])('counts %d as %s', (value, said) => {
    expect(count(value)).toBe(said);
  });

  it('counts in the singular and the plural', () => {
    expect(counted(1, 'row')).toBe('1 row');
    expect(counted(0, 'row')).toBe('0 rows');
    expect(counted(2, 'stretch', 'stretches')).toBe('2 stretches');
  });

  it('never calls something nothing', () => {
    expect(percent(0)).toBe('0 %');
    expect(percent(0.001)).toBe('under 1 %');
    expect(percent(0.445)).toBe('45 %');
  });
});

describe('time', () => {
  it.each([
    [0, '0 s'],
    [59, '59 s'],
    [60, '1 min'],
    [59 * 60 + 40, '1 h 00 min'],
    [3900, '1 h 05 min'],
    [-90, '2 min'],
    [100 * 3600, '100 h 00 min'],
  ])('%d s is said as %s', (value, said) => {
    expect(duration(value)).toBe(said);
  });

  it.each([
    [0.5, '0.5 s'],
    [30, '30 s'],
    [60, '1 min'],
    [150, '2.5 min'],
  ])('an interval of %d s is said as %s', (value, said) => {
    expect(interval(value)).toBe(said);
  });

  it('says a moment before the log as such', () => {
    expect(moment(-600)).toBe('10 min before the log begins');
    expect(moment(600)).toBe('10 min');
  });

  it('tells the time of day by the stamps, across midnights, with or without an offset', () => {
    expect(clockTime('2026-03-14T06:50:00', 0)).toBe('06:50');
    expect(clockTime('2026-03-14T06:50+01:00', 3600)).toBe('07:50');
    expect(clockTime('2026-03-14T23:30:30', 1800)).toBe('00:00 +1 d');
    expect(clockTime('2026-03-14T23:30:00', 26 * 3600)).toBe('01:30 +2 d');
    expect(clockTime(null, 60)).toBeNull();
    expect(clockTime('no time', 60)).toBeNull();
  });
});

describe('cones', () => {
  it('are written as the trade writes them', () => {
    expect(coneName('05.5')).toBe('cone 05½');
    expect(coneName('6')).toBe('cone 6');
  });

  it.each([
    [6, 'cone 6'],
    [6.1, 'cone 6'],
    [6.5, 'between cone 6 and cone 7'],
    [6.9, 'cone 7'],
    [5.25, 'between cone 5 and cone 5½'],
    [-4.75, 'between cone 06 and cone 05½'],
    [0.5, 'between cone 01 and cone 1'],
    [-30, 'below cone 022'],
    [20, 'cone 14 or beyond'],
  ])('position %d stands at %s', (position, said) => {
    expect(conePlace(position)).toBe(said);
  });

  it('finds every cone from its own position', () => {
    for (const cone of CONES) {
      expect(nearestCone(positionOfCone(cone))).toBe(cone);
      if (cone !== '14') expect(conePlace(positionOfCone(cone))).toBe(coneName(cone));
    }
  });

  it('says a range by its ends, or by one name', () => {
    expect(coneRangeAbout(5.2, 4.9, 6.1)).toBe('cone 5 to cone 6');
    expect(coneRangeAbout(5.5, 5.9, 6.1)).toBe('cone 6');
    // It would say no more than `between cone 4 and cone 5` does.
    expect(coneRangeAbout(4.6, 4.1, 5.1)).toBeNull();
    expect(coneRangeAbout(6, 5.9, 6.1)).toBeNull();
  });

  it.each([
    [0.01, 'less than a tenth of a cone'],
    [-0.25, 'a quarter of a cone'],
    [0.5, 'half a cone'],
    [1, 'one cone'],
    [0.62, '0.6 of a cone'],
    [-1.34, '1.3 cones'],
  ])('%d is said as %s', (steps, said) => {
    expect(coneSteps(steps)).toBe(said);
  });
});

describe('temperatures', () => {
  const [inC, inF] = [speechIn('C'), speechIn('F')];

  // Fixed points of the two scales: 0 °C = 32 °F, 100 °C = 212 °F, −40 is the same on both.
  it.each([
    [0, '0 °C', '32 °F'],
    [100, '100 °C', '212 °F'],
    [-40, '−40 °C', '−40 °F'],
    [1222.2, '1222 °C', '2232 °F'],
  ])('%d °C', (value, said, saidInF) => {
    expect(inC.temperature(celsius(value))).toBe(said);
    expect(inF.temperature(celsius(value))).toBe(saidInF);
  });

  it('never adds the 32 to a difference or a rate', () => {
    expect(inF.difference(celsiusDelta(10))).toBe('18 °F');
    expect(inF.difference(celsiusDelta(0))).toBe('0 °F');
    expect(inF.rate(celsiusPerHour(60))).toBe('108 °F/h');
    expect(inF.rate(celsiusPerHour(-150))).toBe('270 °F/h');
  });

  it('says how far two readings are apart by what is said of each', () => {
    // 1173.6 and 1215.4 are 41.8 apart; they are said as 1174 and 1215.
    expect(inC.apart(celsius(1173.6), celsius(1215.4))).toBe('41 °C');
    expect(inF.apart(celsius(1000), celsius(990))).toBe('18 °F');
    expect(inC.apart(celsius(20), celsius(20.4))).toBe('0 °C');
  });

  it('says what is not known to a tenth in whole degrees', () => {
    expect(inC.wholeDifference(celsiusDelta(-4.6))).toBe('5 °C');
    expect(inF.wholeDifference(celsiusDelta(4.6))).toBe('8 °F');
  });

  it('tells small differences to a tenth', () => {
    expect(inC.difference(celsiusDelta(0.44))).toBe('0.4 °C');
    expect(inC.difference(celsiusDelta(9.97))).toBe('10 °C');
    expect(inC.difference(celsiusDelta(12.4))).toBe('12 °C');
  });

  it('signs a difference where the sign matters', () => {
    expect(inC.signedDifference(celsiusDelta(12))).toBe('+12 °C');
    expect(inF.signedDifference(celsiusDelta(-10))).toBe('−18 °F');
    expect(inC.signedDifference(celsiusDelta(-0.01))).toBe('0 °C');
  });

  it('says every difference without the 32, whatever its size', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (value) => {
        const number = Number(inF.difference(celsiusDelta(value)).replace(' °F', ''));
        expect(Math.abs(number - Math.abs(value) * 1.8)).toBeLessThanOrEqual(0.5);
      }),
    );
  });
});

describe('a lower bound on the cone scale', () => {
  it.each([
    [6, 'cone 6'],
    [6.5, 'cone 6'],
    [6.9, 'cone 7'],
    [-40, 'below cone 022'],
  ])('at %d is %s', (position, said) => {
    expect(coneAtLeast(position)).toBe(said);
  });
});
