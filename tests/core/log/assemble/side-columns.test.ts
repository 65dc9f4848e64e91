import { expect, test } from 'vitest';
import { asPercent, celsiusOf, sideCelsius } from '../../../../core/log/assemble/side-columns.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { climb, utf8 } from '../helpers.ts';

test('outputs up to one are shares of full power, unless they are said to be percent', () => {
  expect([...asPercent(Float64Array.of(0, 0.25, 1, NaN), false)]).toEqual([0, 25, 100, NaN]);
  expect([...asPercent(Float64Array.of(0, 0.25, 1), true)]).toEqual([0, 0.25, 1]);
  expect([...asPercent(Float64Array.of(0, 40), false)]).toEqual([0, 40]);
});

test('temperatures beside the main one are in °C, without impossible numbers', () => {
  expect([...celsiusOf(Float64Array.of(32, 212), 'F')].map(Math.round)).toEqual([0, 100]);
  const values = Float64Array.of(...Array.from({ length: 30 }, (_, i) => 500 + i), 9999, 531);
  const rows = Uint32Array.from(values.keys());
  const read = sideCelsius(values, { unit: 'C', couple: null }, rows, new Set([505]));
  expect(read[30]).toBeNaN();
  expect(read[5]).toBeNaN();
  expect(read[6]).toBe(506);
});

test('a column has the unit of its own header, else that of the main one', () => {
  const rows = climb((c) => [c * 1.8 + 32, c - 5, c * 1.8 + 32]).map((row) => row.join(','));
  const log = readLog(utf8(['Time,Kiln °F,Shelf °C,Setpoint', ...rows].join('\n')), 'x');
  expect(log.celsius[9]! - log.zones[0]!.celsius[9]!).toBeCloseTo(5, 6);
  expect(log.setpointC![9]).toBeCloseTo(log.celsius[9]!, 6);
});
