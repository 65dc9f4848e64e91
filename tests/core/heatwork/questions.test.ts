/**
 * The worked questions that concern heat-work (design notes, "Twelve to work through"), on synthetic
 * curves. Temperatures in °F are the askers' own. What the tool answers to all twelve is tried in
 * tests/questions/.
 */
import { describe, expect, test } from 'vitest';
import { kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { doseOf, occupancyOf } from '../../../core/cones/occupancy.ts';
import { loadOf } from '../../../core/heatwork/load.ts';
import { fromFahrenheit, fromFahrenheitPerHour } from '../../../core/units.ts';
import { curveFrom, firing } from '../../builders/trace.ts';
import { hold, measure, ramp } from './measuring.ts';

const rampF = (rateFPerHour: number, toF: number) =>
  ramp(fromFahrenheitPerHour(rateFPerHour), fromFahrenheit(toF));

describe('1: 200 °F typed for 2000 °F', () => {
  const meant = firing(21, rampF(300, 2000), rampF(108, 2185), ramp(250, 300));
  const typed = firing(21, rampF(300, 200), rampF(108, 2185), ramp(250, 300));

  test('took 10.7 h longer and gave the same cone within 0.05', () => {
    expect((typed[2]![0] - meant[2]![0]) / 60).toBeCloseTo(10.7, 1);
    const [a, b] = [measure(meant).cone.position!, measure(typed).cone.position!];
    expect(Math.abs(a - b)).toBeLessThan(0.05);
  });
});

describe('2: full power to 1205 °C, 30 min there: cone 6 down', () => {
  const climb = [20, ramp(60, 100), hold(15), ramp(150, 1205)] as const;
  const without = measure(firing(...climb, ramp(200, 300)));
  const withHold = measure(firing(...climb, hold(30), ramp(200, 300)), { target: '5' });

  test('is near cone 5 without the hold and 6 with it: the hold is the extra cone', () => {
    expect(Math.abs(without.cone.position! - 5)).toBeLessThan(0.5);
    expect(Math.abs(withHold.cone.position! - 6)).toBeLessThan(0.25);
    const held = withHold.parts.find(
      ({ kind, positions }) => kind === 'hold' && positions !== null,
    );
    expect(held!.positions).toBeGreaterThan(0.7);
  });

  test('says in numbers how much less', () => {
    expect(withHold.remedies.map(({ kind }) => kind)).toEqual(['shorter-hold', 'lower-peak']);
  });
});

describe('3: how long at cone 5 to make cone 6', () => {
  test('minutes with a range, which published rules put from 15 min to 2 h', () => {
    const cone5 = measure(firing(20, ramp(150, 1086), ramp(60, 1186), ramp(250, 300)), {
      target: '6',
    });
    const held = cone5.remedies.find(({ kind }) => kind === 'longer-hold')!;
    expect(held.amount).toBeGreaterThan(15);
    expect(held.amount).toBeLessThan(120);
    expect(held.lowAmount).toBeLessThan(25);
    expect(held.highAmount).toBeGreaterThan(90);
  });
});

describe('4: 1220 °C after 60 °C/h, then 30 min', () => {
  const upTo = [20, ramp(150, 1100), ramp(60, 1220), hold(30)] as const;
  const fall = measure(firing(...upTo, ramp(400, 300)));
  const slow = measure(firing(...upTo, ramp(100, 300)));

  test('is cone 7 at the end of the hold', () => {
    const held = measure(firing(...upTo), { recordEnds: 'after-cooling' });
    expect(held.cone.label).toBe('7');
  });

  test('slow cooling adds more, and each part has its share', () => {
    const cooling = (fired: typeof fall) => fired.parts.at(-1)!;
    expect(cooling(slow).positions).toBeGreaterThan(cooling(fall).positions! + 0.25);
    for (const fired of [fall, slow]) {
      expect(fired.parts.map(({ kind }) => kind)).toEqual(['ramp', 'ramp', 'hold', 'cooling']);
      expect(fired.parts.reduce((sum, part) => sum + part.doseShare, 0)).toBeCloseTo(1, 4);
    }
  });
});

describe('5: a bisque that quit at 1727 °F after 18 h, meant for 05', () => {
  test('is cone 09 to 08 by its rate, short; refire to 05', () => {
    for (const rateF of [90, 200]) {
      const fired = measure(firing(20, rampF(rateF, 1727), ramp(150, 100)), { target: '05' });
      expect(fired.cone.position).toBeGreaterThan(-8.2);
      expect(fired.cone.position).toBeLessThan(-6.8);
      expect(loadOf(fired, { endedEarly: true })).toEqual({ state: 'short', refireTo: '05' });
    }
  });
});

describe('7: power out at 1700 °F, run again next day to cone 04', () => {
  test('the first firing adds less than a thousandth', () => {
    const cone04 = kineticsOf('self-supporting', '04');
    const dose = (points: Parameters<typeof curveFrom>[0]) =>
      doseOf(cone04, occupancyOf(curveFrom(points)));
    const first = dose(firing(20, rampF(200, 1700), ramp(150, 100)));
    const second = dose(firing(20, rampF(200, 1760), rampF(108, 1945), ramp(150, 100)));
    expect(first / (first + second)).toBeLessThan(1e-3);
  });
});

describe('12: fired to 04, meant two cones cooler than 06', () => {
  test('is four cones beyond 08', () => {
    const fired = measure(firing(20, ramp(150, 963), ramp(60, 1060), ramp(250, 100)), {
      target: '08',
    });
    expect(fired.cone.position! - -7).toBeGreaterThan(3.5);
    expect(fired.cone.position! - -7).toBeLessThan(4.5);
    expect(fired.target!.verdict).toBe('over');
    expect(loadOf(fired).state).toBe('beyond');
  });
});
