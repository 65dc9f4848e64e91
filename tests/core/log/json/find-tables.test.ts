import { describe, expect, test } from 'vitest';
import { bestTable } from '../../../../core/log/json/find-tables.ts';
import { parseJson } from '../../../../core/log/json/parse-json.ts';

const found = (value: unknown) => {
  const best = bestTable(parseJson(`${JSON.stringify(value)} `).node!);
  return best === null
    ? null
    : { names: best.table.names, rows: best.table.rows.length, entries: best.entries };
};
const count = 6;
const numbers = Array.from({ length: count }, (_, i) => i);
const records = numbers.map((i) => ({ t: i, c: 20 + i }));
const pairs = numbers.map((i) => [i, 20 + i]);

describe('the table in a JSON file', () => {
  test.each([
    ['records', records, ['t', 'c']],
    ['pairs', pairs, ['column 1', 'column 2']],
    ['columns', { t: numbers, c: numbers, name: 'x' }, ['t', 'c']],
    ['columns and data apart', { columns: ['t', 'c'], data: pairs }, ['t', 'c']],
    [
      'columns that are objects',
      { fields: [{ name: 't' }, { name: 'c' }], values: pairs },
      ['t', 'c'],
    ],
    ['records deep inside', { a: { b: [{ log: records }] } }, ['t', 'c']],
    [
      'an object keyed by time',
      Object.fromEntries(numbers.map((i) => [`06:3${i}`, 20 + i])),
      ['time', 'value'],
    ],
    [
      'an object keyed by seconds',
      Object.fromEntries(numbers.map((i) => [String(1710397800 + i), { c: i }])),
      ['time', 'c'],
    ],
  ])('%s', (_, value, names) => {
    expect(found(value)).toMatchObject({ names, rows: count });
  });

  test.each([
    [
      'a list of series',
      [
        { name: 'top', data: pairs },
        { name: 'low', data: pairs },
      ],
    ],
    ['series under their names', { top: pairs, low: pairs }],
    [
      'series deep inside',
      {
        result: {
          series: [
            { name: 'a', values: pairs },
            { name: 'b', values: pairs },
          ],
        },
      },
    ],
  ])('%s', (_, value) => {
    expect(found(value)).toMatchObject({
      names: ['series', 'column 1', 'column 2'],
      rows: 2 * count,
    });
  });

  test('comes with the single values beside it', () => {
    expect(found({ unit: 'K', device: { id: 7, log: records } })?.entries).toEqual([
      { key: 'unit', value: 'K' },
      { key: 'id', value: '7' },
    ]);
  });

  test('is not there in a value alone', () => {
    expect(found(5)).toBeNull();
    expect(found({ a: 1 })).toBeNull();
  });

  test('is found in no time where many levels hold each other', () => {
    let value: unknown = records;
    for (let level = 0; level < 25; level += 1)
      value = { inner: value, other: { inner: [[1, 2]] } };
    const started = performance.now();
    expect(found(value)?.rows).toBe(count);
    expect(performance.now() - started).toBeLessThan(500);
  });
});
