import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { planColumns } from '../../../../core/log/columns/plan-columns.ts';
import { readRows } from '../../../../core/log/delimited/read-rows.ts';
import { layoutOf, textOf } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `2024-03-14 06:${10 + i}:00,${20 + i}.5,ok`);
const read = (lines: readonly string[], isCareful = false) => {
  const text = lines.join('\n');
  const layout = layoutOf(text);
  const plan = planColumns(
    layout.sample,
    {},
    { isContinental: false, sectionTime: null },
    new Account(),
  );
  return readRows(textOf(text), layout, plan, isCareful);
};

describe('the rows of a table', () => {
  test('are read with their lines, fast and with care alike', () => {
    const lines = ['Time,Kiln,Note', ...rows.slice(0, 5), '# x', '', ...rows.slice(5), ''];
    for (const isCareful of [false, true]) {
      const { columns, aside } = read(lines, isCareful);
      expect([columns.length, columns.line[4], columns.line[5]]).toEqual([12, 6, 9]);
      expect(aside).toMatchObject({ comment: 1, blank: 1, footer: 0 });
    }
  });

  test('may hold quoted cells that run over several lines', () => {
    const note = '2024-03-14 06:30:00,50.5,"two\nlines, and\nthree"';
    const { columns } = read(['Time,Kiln,Note', ...rows, note, '2024-03-14 06:31:00,51.5,ok', '']);
    expect([columns.length, columns.line[12], columns.line[13]]).toEqual([14, 14, 17]);
    expect(columns.values[0]![13]).toBe(51.5);
  });

  test('are not swallowed by quotes that are never closed', () => {
    const stray = rows.map((row, i) => (i === 3 ? row.replace('ok', '"ok') : row));
    expect(read(['Time,Kiln,Note', ...stray, '']).columns.length).toBe(12);
  });
});

test('a hundred thousand stray quotes take no longer than lines do', () => {
  const started = performance.now();
  const many = Array.from({ length: 100_000 }, (_, i) => `2024-03-14 06:10:00,${i % 900},"x`);
  expect(read(['Time,Kiln,Note', ...rows, ...many, '']).columns.length).toBe(100_012);
  expect(performance.now() - started).toBeLessThan(5000);
});
