import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { decideDialect } from '../../../../core/log/delimited/decide-dialect.ts';
import { sampleLines } from '../../../../core/log/delimited/sample-lines.ts';
import type { ReadingDecisions } from '../../../../core/model/options.ts';
import { decided, textOf } from '../helpers.ts';

const rows = Array.from({ length: 20 }, (_, i) => [
  `2024-03-14 06:${10 + i}:00`,
  `${20 + 3 * i}.5`,
  `${i % 7}`,
]);
const written = (delimiter: string, mark = '.'): string =>
  rows
    .map((row) => row.map((cell, i) => (i === 1 ? cell.replace('.', mark) : cell)).join(delimiter))
    .join('\n');
const dialect = (text: string, decisions: ReadingDecisions = {}) => {
  const account = new Account();
  const survey = decideDialect(sampleLines(textOf(text)), decisions, account);
  return { survey, account, found: [survey?.dialect.delimiter, survey?.decimal.mark] };
};

describe('what stands between cells', () => {
  test.each([
    [',', '.'],
    [';', ','],
    ['\t', ','],
    ['|', '.'],
    ['~', '.'],
    ['^', ','],
  ])('%s with %s', (delimiter, mark) => {
    expect(dialect(written(delimiter, mark)).found).toEqual([delimiter, mark]);
  });

  test('is blanks where nothing else does as well', () => {
    expect(dialect(written('  ')).found).toEqual(['blanks', '.']);
    expect(dialect(written('\t')).found[0]).toBe('\t');
  });

  test('is what the file or the person says', () => {
    const declared = dialect(`sep=;\n${written(';')}`);
    expect(decided(declared.account, 'delimiter')).toEqual([';', 'declared']);
    const given = dialect(written(';', ','), { delimiter: ';', decimalMark: '.' });
    expect(decided(given.account, 'delimiter')).toEqual([';', 'given']);
    expect(given.survey?.decimal).toEqual({ mark: '.', why: 'given', certainty: 1 });
    expect(dialect(written('  '), { delimiter: ' ' }).found[0]).toBe('blanks');
    expect(dialect(written('\t'), { delimiter: 'tab' }).found[0]).toBe('\t');
    expect(() => dialect(written(','), { delimiter: 'ab' })).toThrow(
      expect.objectContaining({ code: 'bad-option' }),
    );
  });

  test('may be nothing: then there is no table', () => {
    expect(dialect('the firing\nwent well').survey).toBeNull();
  });
});

test('a comma that also separates is put right', () => {
  const { survey, found } = dialect(
    `Zeit,Temp\n${rows.map(([time, temp]) => `${time},${temp!.replace('.', ',')}`).join('\n')}`,
  );
  expect(found).toEqual([',', ',']);
  expect(survey?.dialect.joins).toEqual({ cells: 3, firsts: [1] });
});

test('cells of fixed width are seen where blanks do not tell them', () => {
  const fixed = rows.map(
    ([time, temp], i) =>
      `${time!.slice(11)} ${temp!.padStart(7)}${(i % 2 ? '' : '9').padStart(5)}${String(i).padStart(4)}`,
  );
  expect(dialect(fixed.join('\n')).found[0]).toBe('fixed');
});

test('rows in brackets, and lines of one cell, are seen', () => {
  const tuples = rows.map(([time, temp]) => `('${time}', ${temp})`).join('\n');
  expect(dialect(tuples).survey?.dialect).toMatchObject({ isBracketed: true, delimiter: ',' });
  const alone = rows.map((row) => `Temp: ${row[1]} C`).join('\n');
  expect(dialect(alone).survey?.dialect).toMatchObject({ delimiter: 'none', labels: ['Temp'] });
});

test('whole lines in quotes, and cells with their names, are seen', () => {
  expect(
    dialect(rows.map((row) => `"${row.join(',')}"`).join('\n')).survey?.dialect.isWrapped,
  ).toBe(true);
  expect(
    dialect(rows.map(([time, temp]) => `${time} temp=${temp} set=5`).join('\n')).survey?.dialect
      .labels,
  ).toEqual(['', '', 'temp', 'set']);
});
