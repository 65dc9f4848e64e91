import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { planColumns } from '../../../../core/log/columns/plan-columns.ts';
import { RawColumns, STATES } from '../../../../core/log/columns/raw-columns.ts';
import { RowReader } from '../../../../core/log/columns/row-reader.ts';
import { climb, sampleOf } from '../helpers.ts';

const sample = sampleOf(
  ['Time', 'Kiln', 'Shelf', 'Note'],
  climb((c, row) => [c, c - 9, row === 9 ? 'x' : '']),
);
const plan = planColumns(sample, {}, { isContinental: false, sectionTime: null }, new Account());

const readerOf = (rows: readonly (readonly string[])[]): RowReader => {
  const reader = new RowReader(plan, new RawColumns(plan.wanted.length, 4, false));
  rows.forEach((cells, index) => reader.add(cells, index + 2, reader.timeOf(cells)));
  return reader;
};
const AT = '2024-03-14 06:30:00';

describe('a row', () => {
  test('becomes a time and its numbers', () => {
    const { columns } = readerOf([
      [AT, '20.5', '11', ''],
      [AT, '7e1', '', ''],
    ]);
    expect([...columns.time.subarray(0, 2)]).toEqual([23_400, 23_400]);
    expect([...columns.values[0]!.subarray(0, 2)]).toEqual([20.5, 70]);
    expect(columns.values[1]![1]).toBeNaN();
    expect(columns.line[1]).toBe(3);
  });

  test.each([
    ['read', '20.5', '11', ''],
    ['no-reading', '', '11', ''],
    ['no-reading', 'OPEN', '11', ''],
    ['no-reading', '---', '', ''],
    ['event', '', '', 'Door opened'],
    ['event', 'Door opened', '', ''],
    ['no-reading', '', '11', 'Door opened'],
    ['unreadable-temperature', '20.5.1', '', ''],
    ['unreadable-temperature', '45 %', '', ''],
  ])('%s: %s, %s, %s', (state, ...cells) => {
    expect(STATES[readerOf([[AT, ...cells]]).columns.state[0]!]).toBe(state);
  });

  test('keeps the unit beside its number', () => {
    const { columns } = readerOf([
      [AT, '68 °F', '', ''],
      [AT, '20.5', '', ''],
    ]);
    expect([columns.units.of(0), columns.units.of(1)]).toEqual(['F', undefined]);
    expect(columns.values[0]![0]).toBe(68);
  });

  test('counts the marks that it met', () => {
    expect([
      ...readerOf([
        [AT, 'OPEN', '', ''],
        [AT, 'OPEN', '', ''],
        [AT, 'err', '', ''],
      ]).marks,
    ]).toEqual([
      ['OPEN', 2],
      ['err', 1],
    ]);
  });
});

test('a row can be rejected as a whole', () => {
  const reader = readerOf([]);
  reader.reject(7, 'too-few-cells', 12);
  expect(STATES[reader.columns.state[0]!]).toBe('too-few-cells');
  expect(reader.columns.time[0]).toBe(12);
  expect(reader.columns.values[0]![0]).toBeNaN();
});
