import { describe, expect, test } from 'vitest';
import { Account } from '../../../../core/log/account.ts';
import { decided, layoutOf } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `2024-03-14 06:${10 + i}:00;${20 + i},5;7`);

describe('a layout', () => {
  test('knows where the names stand and where rows begin', () => {
    const account = new Account();
    const text = ['Kiln log', 'Unit: C', '', 'Time;Temp;Step', 'hh;°C;-', ...rows].join('\r\n');
    const layout = layoutOf(text, {}, account);
    expect(layout).toMatchObject({ headerLine: 4, startLine: 6, isNested: false });
    expect(text.slice(layout.startByte - 1).startsWith('2024')).toBe(true);
    expect(layout.header).toEqual(['Time;Temp;Step', 'hh;°C;-']);
    expect(layout.sample.preamble.entries).toEqual([{ key: 'Unit', value: 'C' }]);
    expect(layout.sample.rows).toHaveLength(12);
    expect(decided(account, 'header-line')).toEqual(['4', 'above-data']);
    expect(decided(account, 'units-row')).toEqual(['5', 'above-data']);
  });

  test('counts lines, not records, above the rows', () => {
    const layout = layoutOf(['"Ofen\nTemp";"a\nb";c', ...rows].join('\n'));
    expect(layout).toMatchObject({ headerLine: 1, startLine: 4 });
  });

  test('follows the person as to the header', () => {
    const account = new Account();
    const text = ['Time;Temp;Step', 'Zeit;Ofen;Stufe', ...rows].join('\n');
    expect(layoutOf(text, { headerLine: 2 }, account).sample.names).toEqual([
      'Zeit',
      'Ofen',
      'Stufe',
    ]);
    expect(decided(account, 'header-line')).toEqual(['2', 'given']);
    expect(layoutOf(text, { headerLine: null }, account)).toMatchObject({
      headerLine: null,
      header: [],
    });
  });

  test('says which of several tables it takes', () => {
    const account = new Account();
    const text = ['Time;X;Y', ...rows.slice(0, 3), '', 'Time;Temp;Step', ...rows].join('\n');
    expect(layoutOf(text, {}, account).headerLine).toBe(6);
    expect(decided(account, 'table')).toEqual(['line 7', 'most-rows']);
  });

  test('sees records of other kinds nested in the table', () => {
    const nested = ['Cycle;A', ';Step;B', ';;Time;Temp;No', ...rows.map((row) => `;;${row}`)];
    expect(layoutOf(nested.join('\n')).isNested).toBe(true);
  });
});
