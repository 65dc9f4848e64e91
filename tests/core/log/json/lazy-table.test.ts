import { expect, test } from 'vitest';
import { eachRow } from '../../../../core/log/json/json-table.ts';
import { lazyTable } from '../../../../core/log/json/lazy-table.ts';
import { linesOf } from '../../../../core/log/json/spans.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { utf8 } from '../helpers.ts';

const lazy = (...lines: string[]) => {
  const text = lines.join('\n');
  const { table, damaged } = lazyTable(text, linesOf(text));
  return {
    names: table.names,
    rows: [...eachRow(table)].map(({ cells }) => [...cells]),
    damaged: [...damaged],
    table,
  };
};

test('records are read on demand, with all names that any of them has', () => {
  const { names, rows, damaged, table } = lazy(
    '{"t":1,"kiln":{"c":20}}',
    '{"t":2',
    '{"t":3,"note":"x"} ',
  );
  expect([names, damaged]).toEqual([['t', 'kiln.c', 'note'], [1]]);
  expect(rows).toEqual([['1', '20'], [], ['3', undefined, 'x']]);
  expect([table.rows.from(2), table.rows.at(1).isCut]).toEqual([31, true]);
});

test('rows without names may begin with a row of names', () => {
  expect(lazy('["time","temp"]', '[1,20]', '[2,21,5]')).toMatchObject({
    names: ['time', 'temp', 'column 3'],
    rows: [
      ['1', '20'],
      ['2', '21', '5'],
    ],
  });
  expect(lazy('[1,20]', '[2,21]').names).toEqual(['column 1', 'column 2']);
});

test('a long list is read as a short one of the same records is', () => {
  const record = (i: number) => ({
    at: 1710397800 + 60 * i,
    kiln: 20.5 + ((i * 7) % 900),
    unit: 'F',
    note: i === 3 ? null : 'ok',
  });
  const read = (count: number) => {
    const records = Array.from({ length: count }, (_, i) => record(i));
    return readLog(utf8(JSON.stringify({ device: 'x', log: records })), 'x');
  };
  const [short, long] = [read(4000), read(6000)];
  expect(long.source.rowsRead).toBe(6000);
  expect(long.celsius.slice(0, 4000)).toEqual(short.celsius);
  expect(long.source.channels).toEqual(short.source.channels);
  expect(long.source.decisions).toEqual(short.source.decisions);
  expect(long.line[5999]).toBe(1);
});
