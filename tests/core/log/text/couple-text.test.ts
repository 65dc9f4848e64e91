import { describe, expect, test } from 'vitest';
import {
  coldJunctionInName,
  coupleTypeIn,
  declaredColdJunction,
  textsOf,
} from '../../../../core/log/text/couple-text.ts';
import { makePreamble } from '../../../../core/log/text/preamble.ts';

describe('the couple type', () => {
  test.each([
    ['Thermocouple type K', 'K'],
    ['Sensor: Typ S', 'S'],
    ['Thermoelement R', 'R'],
    ['thermocouple de type n', 'N'],
    ['Termopar tipo J', 'J'],
    ['Termocoppia: tipo T', 'T'],
    ['Thermokoppel, type B', 'B'],
    ['Kiln TC-K (mV)', 'K'],
    ['E-type thermocouple', 'E'],
    ['Couple (mV)', null],
    ['Type of sensor', null],
    ['type', null],
    ['Prototype K2', null],
  ])('%s', (text, type) => {
    expect(coupleTypeIn([text])).toBe(type);
  });

  test('is not told by texts that name several', () => {
    expect(coupleTypeIn(['Channel 1: type K', 'Channel 2: type S'])).toBeNull();
    expect(coupleTypeIn(['Channel 1: type K', 'Channel 2: type K'])).toBe('K');
  });
});

describe('the cold junction', () => {
  test.each([
    ['Cold junction: 23.5 °C', 23.5],
    ['Vergleichsstelle; 0 °C', 0],
    ['Reference junction = 77 °F', 25],
    ['CJC,on', 'compensated'],
    ['Compensation de soudure froide : oui', 'compensated'],
    ['Soudure froide : compensée', 'compensated'],
    ['Vergleichsstelle: aus', 'raw'],
    ['Values are cold junction compensated', 'compensated'],
    ['Millivolts, uncompensated', 'raw'],
    ['Spannung nicht kompensiert', 'raw'],
    ['Cold junction: 900', null],
    ['CJC: 0', null],
    ['Pressure compensation fitted', null],
  ])('%s', (line, said) => {
    const found = declaredColdJunction(makePreamble([line]));
    if (typeof said === 'number') expect(found).toBeCloseTo(said, 6);
    else expect(found).toBe(said);
  });

  test('may be allowed for by the name of the column', () => {
    expect(coldJunctionInName('TC (mV, compensated)')).toBe('compensated');
    expect(coldJunctionInName('TC (mV)')).toBeNull();
  });
});

test('the entries of JSON count as lines', () => {
  expect(textsOf({ lines: [], entries: [{ key: 'couple', value: 'type K' }] })).toEqual([
    'couple: type K',
  ]);
  expect(textsOf(makePreamble(['Type: K']))).toEqual(['Type: K']);
});
