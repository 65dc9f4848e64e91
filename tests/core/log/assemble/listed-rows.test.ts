import { expect, test } from 'vitest';
import { listRejected } from '../../../../core/log/assemble/listed-rows.ts';
import { RawColumns, READ, stateOf } from '../../../../core/log/columns/raw-columns.ts';

test('rejected rows are counted, and the first 200 listed with line, reason and cut text', () => {
  const columns = new RawColumns(1, 4, false);
  for (let row = 0; row < 500; row += 1)
    columns.add(row + 2, row % 2 === 0 ? READ : stateOf('event'));
  const asked: number[] = [];
  const { count, listed } = listRejected(columns, {
    lineOf: (number) => number * 10,
    linesOf: (numbers) => {
      asked.push(...numbers);
      return numbers.map((number) => (number === 3 ? 'x'.repeat(300) : `row ${number}`));
    },
  });
  expect([count, listed.length, asked.length]).toEqual([250, 200, 200]);
  expect(listed[0]).toEqual({ line: 30, reason: 'event', text: `${'x'.repeat(199)}…` });
  expect(listed[1]).toEqual({ line: 50, reason: 'event', text: 'row 5' });
});
