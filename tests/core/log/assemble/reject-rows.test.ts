import { expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import {
  accountForMarks,
  readingsOf,
  rejectBelowAbsoluteZero,
  rejectImpossible,
  rejectUntimed,
  withoutImpossible,
} from '../../../../core/log/assemble/reject-rows.ts';
import { RawColumns, READ, STATES, stateOf } from '../../../../core/log/columns/raw-columns.ts';
import { decided } from '../helpers.ts';

const columnsOf = (values: readonly number[]): RawColumns => {
  const columns = new RawColumns(1, 4, false);
  values.forEach((value, row) => {
    columns.add(row + 2, Number.isNaN(value) ? stateOf('no-reading') : READ);
    columns.time[row] = row;
    columns.values[0]![row] = value;
  });
  return columns;
};
const states = (columns: RawColumns): string[] =>
  [...columns.state.subarray(0, columns.length)].map((state) => STATES[state]!);
const climb = Array.from({ length: 40 }, (_, i) => 500 + i);

test('impossible numbers are taken for missing readings', () => {
  const columns = columnsOf([...climb, 9999, 541, NaN]);
  expect([...rejectImpossible(columns)]).toEqual([9999]);
  expect(states(columns).slice(-3)).toEqual(['no-reading', 'read', 'no-reading']);
  expect(readingsOf(columns)).toHaveLength(41);
});

test('nothing below absolute zero is a reading', () => {
  const columns = columnsOf([293, 4, 0, 3]);
  expect([...rejectBelowAbsoluteZero(columns, 'K')]).toEqual([0]);
  expect(states(columns)).toEqual(['read', 'read', 'no-reading', 'read']);
});

test('a column beside the main one loses its impossible numbers', () => {
  expect([...withoutImpossible(Float64Array.from([...climb, -999, NaN, 541]))].slice(-3)).toEqual([
    NaN,
    NaN,
    541,
  ]);
});

test('rows whose time came to nothing are rejected', () => {
  const columns = columnsOf([20, 21]);
  rejectUntimed(columns, {
    seconds: Float64Array.of(0, Number.NaN),
    kind: 'elapsed',
    pattern: '',
    instantOf: () => null,
  });
  expect(states(columns)).toEqual(['read', 'unreadable-time']);
});

test('the marks are accounted for', () => {
  const account = new Account();
  accountForMarks({ words: [], numbers: [], given: [] }, account);
  expect(account.decisions()).toEqual([]);
  accountForMarks({ words: ['OPEN'], numbers: [], given: [] }, account);
  expect(decided(account, 'no-reading-marks')).toEqual(['OPEN', 'known-words']);
  accountForMarks({ words: ['OPEN'], numbers: [-999], given: [] }, account);
  expect(decided(account, 'no-reading-marks')).toEqual(['OPEN, -999', 'impossible-values']);
  expect(account.warnings()).toEqual(['impossible-numbers']);
  accountForMarks({ words: ['OPEN', 'n. v.'], numbers: [-999], given: ['n. v.'] }, account);
  expect(decided(account, 'no-reading-marks')).toEqual(['n. v., OPEN, -999', 'given']);
});

test('a number that the person says is no reading is none, however ordinary', () => {
  const columns = columnsOf([20, 21, 25, 22, 25]);
  expect([...rejectImpossible(columns, new Set([25]))]).toEqual([]);
  expect(states(columns)).toEqual(['read', 'read', 'no-reading', 'read', 'no-reading']);
  expect([...withoutImpossible(Float64Array.of(20, 25, 21), new Set([25]))]).toEqual([20, NaN, 21]);
});
