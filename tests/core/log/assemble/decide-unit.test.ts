import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import {
  areFine,
  decideUnit,
  isDoubtful,
  plausibleUnit,
  type UnitEvidence,
} from '../../../../core/log/assemble/decide-unit.ts';
import { decided } from '../helpers.ts';

const NOTHING: UnitEvidence = {
  ...{ given: null, inCells: new Map(), header: null, preamble: null, others: [] },
  isUnitInOwnColumn: false,
  voltages: { hasCouple: false, isFine: false },
};
const FIRING = { first: 20, min: 18, max: 1220 };

describe('the unit', () => {
  test.each([
    [{ given: 'K' }, 'K', 'given'],
    [
      {
        inCells: new Map([
          ['F', 9],
          ['C', 2],
        ]),
        header: 'C',
      },
      'F',
      'in-cell',
    ],
    [{ inCells: new Map([['F', 9]]), isUnitInOwnColumn: true }, 'F', 'own-column'],
    [{ header: 'F', preamble: 'C' }, 'F', 'header'],
    [{ preamble: 'F' }, 'F', 'preamble'],
    [{ others: ['F', 'F'] }, 'F', 'header'],
    [{ others: ['F', 'C'] }, 'C', 'plausible'],
    [{}, 'C', 'plausible'],
  ] as [Partial<UnitEvidence>, string, string][])('%j', (evidence, unit, why) => {
    const account = new Account();
    expect(decideUnit({ ...NOTHING, ...evidence }, FIRING, account)).toBe(unit);
    expect(decided(account, 'unit')).toEqual([unit, why]);
    expect(account.warnings().includes('unit-assumed')).toBe(why === 'plausible');
  });

  test('is a voltage by its values only where the couple is known', () => {
    const couple = { first: 0.03, min: -0.01, max: 47.213 };
    const decide = (hasCouple: boolean, isFine: boolean, extent = couple) =>
      decideUnit({ ...NOTHING, voltages: { hasCouple, isFine } }, extent, new Account());
    expect(decide(true, false)).toBe('mV');
    expect(decide(false, false)).toBe('C');
    expect(() => decide(false, true)).toThrow(expect.objectContaining({ code: 'no-temperature' }));
    expect(decide(true, true, FIRING)).toBe('C');
    expect(decide(true, true, { first: 21, min: 19, max: 23 })).toBe('C');
  });
});

test('voltages are printed finer than degrees', () => {
  expect(areFine(Float64Array.of(0.123, 4.517, 20.002, 1.5, NaN))).toBe(true);
  expect(areFine(Float64Array.of(20.12, 21.37, 1209.99))).toBe(false);
});

describe('by the course of a firing alone', () => {
  test.each([
    ['a kiln from the room to cone 6', { first: 20, min: 18, max: 1222 }, 'C'],
    ['the same in °F', { first: 70, min: 66, max: 2232 }, 'F'],
    ['a bisque in °F', { first: 72, min: 70, max: 1828 }, 'F'],
    ['the same in K', { first: 293, min: 291, max: 1495 }, 'K'],
    ['cooling from the room towards nothing', { first: 293, min: 2.9, max: 293 }, 'K'],
    ['a room in K', { first: 294.4, min: 294.2, max: 294.7 }, 'K'],
    ['a room', { first: 21, min: 19, max: 23 }, 'C'],
    ['a kiln opened warm', { first: 60, min: 60, max: 1222 }, 'C'],
  ])('%s', (_, extent, unit) => {
    expect(plausibleUnit(extent).unit).toBe(unit);
  });

  test('certainty is highest where the values leave no choice', () => {
    const sure = plausibleUnit({ first: 70, min: 66, max: 2232 }).certainty;
    expect(sure).toBeGreaterThan(plausibleUnit({ first: 60, min: 60, max: 1222 }).certainty);
    expect(plausibleUnit({ first: 21, min: 19, max: 23 }).certainty).toBeLessThan(0.6);
  });
});

test('a unit that does not suit the values is doubtful', () => {
  expect(isDoubtful('C', { first: 70, min: 66, max: 2232 })).toBe(true);
  expect(isDoubtful('F', { first: 20, min: 18, max: 1222 })).toBe(true);
  expect(isDoubtful('K', { first: 20, min: 18, max: 1222 })).toBe(true);
  expect(isDoubtful('C', { first: 20, min: 18, max: 1222 })).toBe(false);
  expect(isDoubtful('F', { first: 70, min: 66, max: 2232 })).toBe(false);
});
