import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { planColumns } from '../../../../core/log/columns/plan-columns.ts';
import { RawColumns } from '../../../../core/log/columns/raw-columns.ts';
import { makeFastRows } from '../../../../core/log/delimited/fast-rows.ts';
import { layoutOf, textOf } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `2024-03-14 06:${10 + i}:00,${20 + i}.5,7`);
const fastOf = (lines: readonly string[]) => {
  const text = `${lines.join('\n')}\n`;
  const layout = layoutOf(text);
  const plan = planColumns(
    layout.sample,
    {},
    { isContinental: false, sectionTime: null },
    new Account(),
  );
  const columns = new RawColumns(plan.wanted.length, 4, plan.seriesColumn !== null);
  return {
    fast: makeFastRows(textOf(text), layout, plan, columns),
    columns,
    start: layout.startByte,
    text,
  };
};

describe('the fast path', () => {
  test('takes plain rows, in one run', () => {
    const { fast, columns, start, text } = fastOf(['Time,Kiln,Step', ...rows]);
    expect(fast?.run(start, 2)).toBe(12);
    expect(fast?.at).toBe(text.length);
    expect([columns.length, columns.line[0], columns.line[11]]).toEqual([12, 2, 13]);
    expect(columns.values[0]!.slice(0, 2)).toEqual(Float64Array.of(20.5, 21.5));
    expect(columns.time[1]! - columns.time[0]!).toBe(60);
  });

  test('takes quoted cells and CR LF', () => {
    const quoted = rows.map((row) =>
      row
        .split(',')
        .map((cell) => `"${cell}"`)
        .join(','),
    );
    const { fast, start } = fastOf(['Time,Kiln,Step\r', ...quoted.map((row) => `${row}\r`)]);
    expect(fast?.run(start, 2)).toBe(12);
  });

  test.each([
    ['a mark', '2024-03-14 07:00:00,OPEN,7'],
    ['a comment', '# all well'],
    ['a short row', '2024-03-14 07:00:00,20.5'],
    ['a long row', '2024-03-14 07:00:00,20.5,7,8'],
    ['a blank line', ''],
    ['a doubled quote', '2024-03-14 07:00:00,"20""5",7'],
    ['an NUL', '2024-03-14 07:00:00,\u00002.5,7'],
  ])('stops before %s', (_, odd) => {
    const { fast, start } = fastOf(['Time,Kiln,Step', ...rows.slice(0, 8), odd, ...rows.slice(8)]);
    expect(fast?.run(start, 2)).toBe(8);
  });

  test('leaves a last line without its end to the careful path', () => {
    const { fast, start, text } = fastOf(['Time,Kiln,Step', ...rows]);
    expect(fast).not.toBeNull();
    const cut = text.slice(0, -1);
    const layout = layoutOf(cut);
    const plan = planColumns(
      layout.sample,
      {},
      { isContinental: false, sectionTime: null },
      new Account(),
    );
    const columns = new RawColumns(plan.wanted.length, 4, false);
    expect(makeFastRows(textOf(cut), layout, plan, columns)?.run(start, 2)).toBe(11);
  });

  test('is not there for tables whose rows need more than their own cells', () => {
    const long = rows.flatMap((row) =>
      ['top', 'low'].map((name) => `${row.slice(0, 19)},${name},20`),
    );
    expect(fastOf(['Time,Channel,Value', ...long]).fast).toBeNull();
    expect(
      fastOf(['Zeit,Temp', ...rows.map((row) => row.replace('.', ',').slice(0, -2))]).fast,
    ).toBeNull();
  });
});
