import { describe, expect, test } from 'vitest';
import {
  secondsIn,
  temperatureScale,
  timeScale,
  unitInName,
  unitOfText,
} from '../../../../core/log/text/unit-text.ts';

describe('a unit by itself', () => {
  test.each<readonly [string, string]>([
    ...[
      '°C',
      'C',
      '[C]',
      '(°C)',
      'degC',
      'deg. C',
      'Celsius',
      '℃',
      'ºC',
      '?C',
      '\ufffdC',
      '›C',
      'øC',
      'Â°C',
      'oC',
      'Grad C',
    ].map((text) => [text, 'C'] as const),
    ...['°F', 'F', 'degrees F', 'Fahrenheit', '℉', 'oF'].map((text) => [text, 'F'] as const),
    ...['K', '[K]', 'Kelvin'].map((text) => [text, 'K'] as const),
    ['mV', 'mV'],
    ['%', 'percent'],
    ['°C/min', 'rate'],
    ['K/h', 'rate'],
    ['s', 's'],
    ['[min]', 'min'],
    ['Stunden', 'h'],
    ['ms', 'ms'],
    ['kW', 'other'],
  ])('%s', (text, unit) => {
    expect(unitOfText(text)).toBe(unit);
  });

  test.each([
    '',
    'MV',
    'ok',
    'of',
    'Kiln',
    'Top',
    '50% DoD (mV)',
    'a very long text that is no unit',
  ])('is not: %s', (text) => {
    expect(unitOfText(text)).toBeNull();
  });
});

describe('a unit in a name', () => {
  test.each([
    ['Temperature (°C)', 'C'],
    ['T/°C', 'C'],
    ['Temp./›C', 'C'],
    ['temperature_C', 'C'],
    ['tempF', 'F'],
    ['Temp in °F', 'F'],
    ['Kiln deg F', 'F'],
    ['T [K]', 'K'],
    ['Logger H°C/%RH', 'C'],
    ['Heating Rate (C/s)', 'rate'],
    ['Humidity (RH(%))', 'percent'],
    ['Time (min)', 'min'],
    ['elapsed_s', 's'],
    ['Couple (mV)', 'mV'],
    ['Flow (ml/min)', 'other'],
  ])('%s', (name, unit) => {
    expect(unitInName(name)).toBe(unit);
  });

  test.each(['C', 'K', 'Zone C', 'Channel F', 'T1(?)', 'Kiln', 'MV', 'kiln_c'])(
    'is not in: %s',
    (name) => {
      expect(unitInName(name)).toBeNull();
    },
  );
});

test('scales of temperature and of time are told apart', () => {
  expect(temperatureScale('C')).toBe('C');
  expect(temperatureScale('s')).toBeNull();
  expect(temperatureScale('rate')).toBeNull();
  expect(timeScale('min')).toBe('min');
  expect(timeScale('K')).toBeNull();
  expect(secondsIn('h')).toBe(3600);
  expect(secondsIn('us')).toBe(1e-6);
});
