import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { readJson } from '../../../../core/log/json/read-json.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { decided, textOf, utf8 } from '../helpers.ts';

const records = Array.from({ length: 20 }, (_, i) => ({
  at: 1710397800 + 60 * i,
  kiln: 20.5 + 3 * i,
  setpoint: 21 + 3 * i,
}));
const read = (text: string, account = new Account()) =>
  readJson(textOf(text), 'x', text.length, {}, account);

test('a JSON log becomes a table with its account', () => {
  const account = new Account();
  const table = read(JSON.stringify({ unit: 'F', log: records }), account)!;
  expect(table.source).toMatchObject({ format: 'json', delimiter: null, headerLine: null });
  expect(table.columns.length).toBe(20);
  expect(table.plan.roles).toMatchObject({ temperature: 1, setpoint: { column: 2 } });
  expect(decided(account, 'format')).toEqual(['json', 'file-start']);
});

test('text that is no JSON is left to others', () => {
  expect(read('Time,Temp\n1,2\n')).toBeNull();
  expect(read('[data]\n1,20\n2,30')).toBeNull();
});

describe('a log from JSON', () => {
  test('knows the line of each row', () => {
    const log = readLog(
      utf8(`[\n${records.map((record) => JSON.stringify(record)).join(',\n')}\n]`),
      'x',
    );
    expect([log.line[0], log.line[19], log.startInstant]).toEqual([2, 21, '2024-03-14T06:30:00Z']);
  });

  test('rejects records without a time or a reading, each with its text', () => {
    const odd = [
      ...records.slice(0, 10),
      { kiln: 50 },
      { at: 1710398400, kiln: null },
      { at: 'noon', kiln: 51 },
      ...records.slice(13),
    ];
    const { source } = readLog(utf8(JSON.stringify(odd)), 'x');
    expect(source.rejected).toEqual([
      { line: 1, reason: 'no-time', text: '{"kiln":50}' },
      { line: 1, reason: 'no-reading', text: '{"at":1710398400,"kiln":null}' },
      { line: 1, reason: 'unreadable-time', text: '{"at":"noon","kiln":51}' },
    ]);
  });

  test('says where the file was cut', () => {
    const { source } = readLog(utf8(JSON.stringify(records).slice(0, -9)), 'x');
    expect([source.rowsRead, source.rowsKept]).toEqual([20, 19]);
    expect(source.rejected[0]?.reason).toBe('half-written');
    expect(source.warnings).toContain('half-written-end');
  });
});
