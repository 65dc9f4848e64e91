import { expect, test } from 'vitest';
import { alignNames, namesOverCuts } from '../../../../core/log/delimited/align-names.ts';

const rows = ['     0    20.5     21', '    60    21.0     22'];

test('names go over the columns under them, though they hold blanks or leave one out', () => {
  expect(alignNames('  Time    Kiln    Set', rows, 3)).toEqual(['Time', 'Kiln', 'Set']);
  expect(alignNames(' Time  Kiln temp  Set point', rows, 3)).toEqual([
    'Time',
    'Kiln temp',
    'Set point',
  ]);
  expect(alignNames('          [°C]   [°C]', rows, 3)).toEqual(['', '[°C]', '[°C]']);
});

test('names over cells of fixed width', () => {
  expect(namesOverCuts('Time      Kiln    Set', rows, [0, 7, 15])).toEqual(['Time', 'Kiln', 'Set']);
});
