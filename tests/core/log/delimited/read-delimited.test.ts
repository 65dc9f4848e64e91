import { expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { readDelimited } from '../../../../core/log/delimited/read-delimited.ts';
import { textOf, decided } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `14.03.2024 06:${10 + i};${20 + i},5`);
const read = (text: string, account = new Account()) =>
  readDelimited(textOf(text), 'x', text.length, {}, account, false);

test('a table comes with its account and the text of its lines', () => {
  const account = new Account();
  const table = read(['Zeit;Ofen °C', ...rows, '# x', ''].join('\n'), account);
  expect(table.source).toMatchObject({
    format: 'delimited',
    delimiter: ';',
    decimalMark: ',',
    headerLine: 1,
  });
  expect(table.columns.length).toBe(12);
  expect(table.linesOf([2, 5])).toEqual([rows[0], rows[3]]);
  expect(table.lineOf(5)).toBe(5);
  expect(decided(account, 'format')).toEqual(['delimited', 'rows-agree']);
  expect(decided(account, 'lines-aside')).toEqual(['comment 1', 'counted']);
});

test('text without a table is refused', () => {
  expect(() => read('nothing here')).toThrow(expect.objectContaining({ code: 'not-readable' }));
});
