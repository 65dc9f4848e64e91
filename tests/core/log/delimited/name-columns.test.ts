import { expect, test } from 'vitest';
import { layoutOf } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `2024-03-14 06:${10 + i}:00;${20 + i},5;7`);
const names = (...above: string[]): readonly string[] =>
  layoutOf([...above, ...rows].join('\n')).sample.names;

test('names are joined from several lines, without repeating themselves', () => {
  expect(names('Time;Sample;Program', ';Temperature;Temperature')).toEqual([
    'Time',
    'Sample Temperature',
    'Program Temperature',
  ]);
  expect(names('Time;Kiln;Step', 'Time;Kiln;No')).toEqual(['Time', 'Kiln', 'Step No']);
});

test('names are told apart, and made up where there is none', () => {
  expect(names('Time;Temp;Temp')).toEqual(['Time', 'Temp', 'Temp (2)']);
  expect(names('Time;Temp;')).toEqual(['Time', 'Temp', 'column 3']);
  expect(names()).toEqual(['column 1', 'column 2', 'column 3']);
});

test('names may be listed one below the other', () => {
  const listed = ['Sig1;Time (min)', 'Sig2;Temperature (°C)', 'Sig3;Weight (mg)'];
  const wide = Array.from({ length: 12 }, (_, i) => `${i};${20 + i}.5;7.5;8.5;9.5`);
  const text = [...listed, 'Sig4;Flow A', 'Sig5;Flow B', 'Start', ...wide].join('\n');
  expect(layoutOf(text).sample.names.slice(0, 2)).toEqual(['Time (min)', 'Temperature (°C)']);
});

test('a header that is one name short leaves the first cells without one', () => {
  const table = (first: (i: number) => string) =>
    ['Time,Temp', ...Array.from({ length: 12 }, (_, i) => `${first(i)},${20 + i}.5`)].join('\n');
  const clock = (i: number) => `2024-03-14 06:${10 + i}`;
  const shifted = ['column 1', 'Time', 'Temp'];
  expect(layoutOf(table((i) => `${i + 1},${clock(i)}`)).sample.names).toEqual(shifted);
  expect(layoutOf(table((i) => `${i + 1},${1_710_397_800 + i}`)).sample.names).toEqual(shifted);
  const behind = ['Time', 'Temp', 'column 3'];
  expect(layoutOf(table((i) => `${clock(i)},${20 + i}`)).sample.names).toEqual(behind);
});

test('names may stand in the cells', () => {
  const lines = Array.from({ length: 12 }, (_, i) => `06:${10 + i} temp=${20 + i}.5 set=30`);
  expect(layoutOf(lines.join('\n')).sample.names).toEqual(['column 1', 'temp', 'set']);
});

test('very long names are cut', () => {
  expect(names(`Time;${'x'.repeat(500)};Step`)[1]).toHaveLength(120);
});
