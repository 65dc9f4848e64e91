import { expect, test } from 'vitest';
import { timeColumnsOf } from '../../../../core/log/columns/time-plan.ts';

test('a plan names the columns that its times come from', () => {
  expect(timeColumnsOf({ form: 'stamp', column: 2, order: 'year-first' })).toEqual([2]);
  expect(
    timeColumnsOf({ form: 'date-and-clock', column: 0, clockColumn: 3, order: 'year-first' }),
  ).toEqual([0, 3]);
  expect(
    timeColumnsOf({ form: 'parts', columns: [0, 1, 2, 3, -1, -1], order: 'year-first' }),
  ).toEqual([0, 1, 2, 3]);
  expect(timeColumnsOf({ form: 'interval', seconds: 60 })).toEqual([]);
  expect(timeColumnsOf({ form: 'section', column: 2, order: 'year-first' })).toEqual([]);
});
