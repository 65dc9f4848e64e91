import { expect, test } from 'vitest';
import { isProgrammeBeside } from '../../../../core/log/columns/programme-like.ts';

const ROWS = 120;
const of = (value: (row: number) => number): Float64Array =>
  Float64Array.from({ length: ROWS }, (_, row) => Math.round(value(row) * 10) / 10);

const asked = of((row) => Math.min(20 + row * 2.5, 220));
const wavering = of((row) => Math.min(17 + row * 2.5, 219) + Math.sin(row * 1.7) * 1.5);

test('exact straight lines beside wavering readings are a programme', () => {
  expect(isProgrammeBeside(asked, wavering)).toBe(true);
});

test('not the other way round, nor beside its own like, nor if it never moves', () => {
  expect(isProgrammeBeside(wavering, asked)).toBe(false);
  expect(isProgrammeBeside(asked, asked)).toBe(false);
  expect(
    isProgrammeBeside(
      of(() => 20),
      wavering,
    ),
  ).toBe(false);
});

test('not if the two do not keep together', () => {
  expect(
    isProgrammeBeside(
      of((row) => 900 - row * 2.5),
      wavering,
    ),
  ).toBe(false);
});

test('not on a handful of rows, nor where most readings lack', () => {
  expect(isProgrammeBeside(asked.slice(0, 20), wavering.slice(0, 20))).toBe(false);
  const holes = wavering.map((value, row) => (row % 3 === 0 ? value : Number.NaN));
  expect(isProgrammeBeside(asked, holes)).toBe(false);
});
