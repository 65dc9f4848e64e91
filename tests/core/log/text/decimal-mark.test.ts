import { expect, test } from 'vitest';
import { decideDecimalMark } from '../../../../core/log/text/decimal-mark.ts';

test.each([
  ['points', [['20.5', '21.0', '22']], '.'],
  ['commas', [['20,5', '21,0', '22']], ','],
  ['points after thousands commas', [['998.5', '1,001.5']], '.'],
  ['commas after thousands points', [['998,5', '1.001,5']], ','],
  ['three decimals with a comma', [['20,572', '21,411', '0,999']], ','],
  ['three decimals with a point', [['20.572', '21.411', '1.5']], '.'],
  ['thousands points without decimals', [['997', '999', '1.001', '1.003']], ','],
  ['thousands commas without decimals', [['997', '999', '1,001', '1,003']], '.'],
  [
    'most of the columns',
    [
      ['20,5', '21,0'],
      ['1,5', '2,5'],
      ['3.5', '2'],
    ],
    ',',
  ],
  [
    'clocks with points beside numbers with commas',
    [
      ['13.30', '13.50', '14.10', '14.30'],
      ['20,5', '21', '22,5', '23,5'],
    ],
    ',',
  ],
  ['nothing at all', [['20', '21']], '.'],
])('%s', (_, columns, mark) => {
  expect(decideDecimalMark(columns).mark).toBe(mark);
});

test('certainty falls where the columns disagree', () => {
  const sure = decideDecimalMark([['20,5', '21,5', '22,5']]).certainty;
  const torn = decideDecimalMark([['20,5', '21,5'], ['1.5']]).certainty;
  expect(sure).toBeGreaterThan(torn);
});
