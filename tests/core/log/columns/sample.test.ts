import { expect, test } from 'vitest';
import { columnNamed, makeSample } from '../../../../core/log/columns/sample.ts';
import { EMPTY_PREAMBLE } from '../../../../core/log/text/preamble.ts';

const sample = makeSample({
  names: ['Time', 'Kiln Top', '__proto__'],
  line: 1,
  isNamed: true,
  aliases: [['Time'], ['Kiln', 'Top'], []],
  units: [null, null, null],
  rows: [['1', '20.5', '7']],
  decimalMark: '.',
  preamble: EMPTY_PREAMBLE,
});

test('a column is meant by its name, an alias, or its number', () => {
  expect(columnNamed(sample, 'Kiln Top')).toBe(1);
  expect(columnNamed(sample, ' kiln top')).toBe(1);
  expect(columnNamed(sample, 'top')).toBe(1);
  expect(columnNamed(sample, '2')).toBe(1);
  expect(columnNamed(sample, 'column 3')).toBe(2);
  expect(columnNamed(sample, '__proto__')).toBe(2);
  expect(columnNamed(sample, 'constructor')).toBeNull();
  expect(columnNamed(sample, '4')).toBeNull();
  expect(columnNamed(sample, '0')).toBeNull();
});

test('a sample has a profile for each of its columns', () => {
  expect(sample.profiles.map(({ kind }) => kind)).toEqual(['number', 'number', 'number']);
});
