import { expect, test } from 'vitest';
import { refuseTable } from '../../../../core/log/delimited/refuse-table.ts';
import { sampleLines } from '../../../../core/log/delimited/sample-lines.ts';
import { Refusal } from '../../../../core/model/refusal.ts';
import { textOf } from '../helpers.ts';

const refusal = (text: string, headerLine?: number): [string, number | null] => {
  try {
    return refuseTable(sampleLines(textOf(text)), headerLine === undefined ? {} : { headerLine });
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    return [thrown.code, thrown.line];
  }
};

test.each([
  ['markup', '\n<html><body>20</body></html>', ['not-readable', 2]],
  ['a header without rows', 'Kiln log\nTime;Temp\n', ['header-only', 2]],
  ['prose', 'Dear all,\nthe firing went well.\n', ['not-readable', 1]],
])('%s', (_, text, expected) => {
  expect(refusal(text)).toEqual(expected);
});

test('a delimiter that makes no table is the fault of whoever gave it', () => {
  const lines = sampleLines(textOf('words\nand words\n'));
  expect(() => refuseTable(lines, { delimiter: '|' })).toThrow(
    expect.objectContaining({ code: 'bad-option' }),
  );
});

test('lines are counted in the singular and the plural', () => {
  const said = (text: string) => {
    try {
      refuseTable(sampleLines(textOf(text)), {});
    } catch (thrown) {
      return (thrown as Refusal).message;
    }
    return null;
  };
  expect(said('nothing here\n')).toContain('was found in 1 line, with');
  expect(said('Dear all,\nthe firing went well.\n')).toContain('was found in 2 lines, with');
});

test('a header line beyond the file is the fault of whoever gave it', () => {
  expect(refusal('a;b\n', 99)[0]).toBe('bad-option');
});
