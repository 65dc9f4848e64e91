import { expect, test } from 'vitest';
import {
  cellOf,
  eachRow,
  tableOfColumns,
  tableOfKeyed,
  tableOfRecords,
  tableOfRows,
  tableOfSeries,
  type JsonTable,
} from '../../../../core/log/json/json-table.ts';
import { parseJson, type JsonNode } from '../../../../core/log/json/parse-json.ts';

const node = (value: unknown): JsonNode => parseJson(JSON.stringify(value)).node!;
const items = (value: readonly unknown[]): readonly JsonNode[] => {
  const array = node(value);
  return array.kind === 'array' ? array.items : [];
};
/** Names and rows, cells that a record lacks as empty ones. */
const shown = ({ names, rows }: JsonTable): unknown => ({
  names,
  rows: [...eachRow({ rows })].map(({ cells }) => names.map((_, column) => cells[column] ?? '')),
});

test('records become rows, whatever keys they have, nested ones joined by points', () => {
  const records = items([{ t: 1, kiln: { value: 20.5, unit: 'C' } }, { t: 2, zones: [7, 8] }, 5]);
  expect(shown(tableOfRecords(records))).toEqual({
    names: ['t', 'kiln.value', 'kiln.unit', 'zones.1', 'zones.2', ''],
    rows: [
      ['1', '20.5', 'C', '', '', ''],
      ['2', '', '', '7', '8', ''],
      ['', '', '', '', '', '5'],
    ],
  });
});

test('hostile keys are names like any other', () => {
  const { node: array } = parseJson('[{"__proto__":1,"constructor":2},{"__proto__":3}]');
  const records = array?.kind === 'array' ? array.items : [];
  expect(shown(tableOfRecords(records))).toEqual({
    names: ['__proto__', 'constructor'],
    rows: [
      ['1', '2'],
      ['3', ''],
    ],
  });
});

test('rows may begin with their names', () => {
  expect(shown(tableOfRows(items([['time', 'temp'], [1, 20.5], [2]]), null))).toEqual({
    names: ['time', 'temp'],
    rows: [
      ['1', '20.5'],
      ['2', ''],
    ],
  });
  expect(shown(tableOfRows(items([[1, 20.5]]), null))).toEqual({
    names: ['column 1', 'column 2'],
    rows: [['1', '20.5']],
  });
  expect(tableOfRows(items([[1, 20.5]]), ['t', 'c'])).toMatchObject({
    names: ['t', 'c'],
    isNamed: true,
  });
});

test('columns stand side by side, the shorter filled up', () => {
  expect(
    shown(
      tableOfColumns([
        ['t', items([1, 2])],
        ['c', items([20.5])],
      ]),
    ),
  ).toEqual({
    names: ['t', 'c'],
    rows: [
      ['1', '20.5'],
      ['2', ''],
    ],
  });
});

test('an object keyed by time gives the key a column', () => {
  const keyed = node({ '06:30': 20.5, '06:31': { kiln: 21, room: 19 }, '06:32': [22, 18] });
  expect(keyed.kind === 'object' && shown(tableOfKeyed(keyed))).toEqual({
    names: ['time', 'value', 'kiln', 'room', 'value 1', 'value 2'],
    rows: [
      ['06:30', '20.5', '', '', '', ''],
      ['06:31', '', '21', '19', '', ''],
      ['06:32', '', '', '', '22', '18'],
    ],
  });
});

test('series become one long table', () => {
  const one = tableOfRows(items([[1, 20.5]]), ['t', 'c']);
  const two = tableOfRows(items([[1, 30.5]]), ['t', 'c']);
  expect(
    shown(
      tableOfSeries([
        ['top', one],
        ['low', two],
      ]),
    ),
  ).toEqual({
    names: ['series', 't', 'c'],
    rows: [
      ['top', '1', '20.5'],
      ['low', '1', '30.5'],
    ],
  });
});

test('nothing is an empty cell, but the word in quotes is a word', () => {
  expect(items([null, 'null', true, 5]).map(cellOf)).toEqual(['', 'null', 'true', '5']);
});
