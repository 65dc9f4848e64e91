import { expect, test } from 'vitest';
import { isNoReadingMark } from '../../../../core/log/text/marks.ts';

// Common practice: what loggers write in place of a reading.
test.each([
  ...[
    'OPEN',
    'Open',
    'O.L',
    'OL',
    'NaN',
    'null',
    'n/a',
    '#N/A',
    '---',
    '--',
    '-',
    '****',
    '?',
    'err',
  ],
  ...['Error', 'ERR 2', 'E1', 'Over', 'under range', 'Fühlerbruch', 'défaut', 'abierto', 'rotto'],
  ...['kapot', 'inf', '-inf', '1.#QNAN', 'sensor open', 'No Reading'],
])('%s says that there is no reading', (cell) => {
  expect(isNoReadingMark(cell)).toBe(true);
});

test.each([
  '',
  '25.5',
  'Door opened',
  'Kiln',
  '12:30',
  'ramp 2',
  'x1',
  'a very long remark of someone',
])('%s does not', (cell) => {
  expect(isNoReadingMark(cell)).toBe(false);
});

test('no reading in six languages', () => {
  const words = ['no signal', 'Keine Messung', 'hors service', 'Sin señal', 'Nessuna lettura'];
  expect([...words, 'geen meting'].filter((word) => !isNoReadingMark(word))).toEqual([]);
});
