import { expect, test } from 'vitest';
import { parseQuantity } from '../../../../core/log/text/quantity.ts';

test.each([
  ['25.5 °C', 25.5, 'C'],
  ['1840F', 1840, 'F'],
  ['293 K', 293, 'K'],
  ['45 %', 45, 'percent'],
  ['41.276 mV', 41.276, 'mV'],
  ['90 min', 90, 'min'],
])('%s', (cell, value, unit) => {
  expect(parseQuantity(cell, '.')).toEqual({ value, unit });
});

test.each(['25.5', '°C', '25.5 apples', 'about 20 °C', ''])('%s is none', (cell) => {
  expect(parseQuantity(cell, '.')).toBeNull();
});
