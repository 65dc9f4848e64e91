import { describe, expect, test } from 'vitest';
import * as limits from '../../../core/log/limits.ts';
import { readLog } from '../../../core/log/read-log.ts';
import { Account } from '../../../core/log/account.ts';
import type { Text } from '../../../core/log/bytes/text.ts';
import { readJson } from '../../../core/log/json/read-json.ts';
import { climb, utf8 } from './helpers.ts';

const rows = climb((celsius) => [celsius]);
const csv = (extra: string): Uint8Array =>
  utf8(['Time,Temp °C', ...rows.map((row) => row.join(','))].join('\n') + `\n${extra}\n`);

describe('a limit', () => {
  test('of line length rejects the line unread and reads on', () => {
    const long = `2024-03-14 12:00:00,${'9'.repeat(limits.MAX_LINE_BYTES)}`;
    const { source } = readLog(csv(`${long}\n2024-03-14 12:10:00,950`), 'x');
    expect(source.rowsKept).toBe(rows.length + 1);
    expect(source.rejected.map(({ reason }) => reason)).toEqual(['line-too-long']);
  });

  test('of columns leaves the cells beyond it alone', () => {
    const wide = rows.map((row) => `${row.join(',')},${'1,'.repeat(limits.MAX_COLUMNS + 50)}`);
    const { source } = readLog(utf8(wide.join('\n')), 'x');
    expect(source.rowsRead).toBe(rows.length);
    expect(source.channels.length).toBeLessThan(limits.MAX_COLUMNS);
  });

  test('of a value makes a longer cell text', () => {
    const digits = `${'0'.repeat(limits.MAX_VALUE_CHARS)}950`;
    const { source } = readLog(csv(`2024-03-14 12:00:00,${digits}\n2024-03-14 12:10:00,950`), 'x');
    expect(source.rejected.map(({ reason }) => reason)).toEqual(['unreadable-temperature']);
  });

  test('of zones keeps the first of them', () => {
    const names = Array.from({ length: limits.MAX_ZONES + 9 }, (_, i) => `Zone ${i + 1} °C`);
    const table = [['Time', ...names], ...climb((celsius) => names.map((_, i) => celsius + i))];
    const log = readLog(utf8(table.map((row) => row.join(';')).join('\n')), 'x');
    expect(log.zones).toHaveLength(limits.MAX_ZONES);
  });

  test('of quoted lines takes a quote that is never closed for a stray one', () => {
    const { source } = readLog(csv('2024-03-14 12:00:00,"950\n2024-03-14 12:10:00,951'), 'x');
    expect(source.rowsKept).toBeGreaterThanOrEqual(rows.length + 1);
    const over = (lines: number): string =>
      `2024-03-14 12:00:00,950,"note${'\nmore'.repeat(lines)}"\n2024-03-14 12:10:00,951,`;
    const noted = (lines: number) =>
      readLog(
        utf8(
          ['Time,Temp °C,Note', ...rows.map((row) => `${row.join(',')},`), over(lines), ''].join(
            '\n',
          ),
        ),
        'x',
      ).source;
    expect(noted(limits.MAX_QUOTED_LINES)).toMatchObject({ rowsKept: 32, rowsRejected: 0 });
    const beyond = noted(limits.MAX_QUOTED_LINES + 1);
    expect(beyond.rowsKept).toBe(32);
  });

  test('of the size of a file, and of JSON, refuses what is larger with the size', () => {
    const huge = { length: limits.MAX_FILE_BYTES + 1 } as Uint8Array;
    expect(() => readLog(huge, 'x')).toThrow(/larger than 512 MB/);
    const bytes = { length: limits.MAX_JSON_BYTES + 1 } as Uint8Array;
    const text: Text = { bytes, encoding: 'utf-8', decode: () => '[' };
    expect(() => readJson(text, 'x', bytes.length, {}, new Account())).toThrow(/up to 128 MB/);
  });

  test('of nesting refuses deeper JSON with the number of levels', () => {
    const nested = (levels: number): Uint8Array => {
      const table = JSON.stringify(rows.map(([time, temp]) => ({ time, temp })));
      return utf8(`${'{"a":'.repeat(levels)}${table}${'}'.repeat(levels)}`);
    };
    // The list and its records are two levels themselves.
    expect(readLog(nested(limits.MAX_JSON_DEPTH - 2), 'x').source.rowsKept).toBe(rows.length);
    expect(() => readLog(nested(limits.MAX_JSON_DEPTH - 1), 'x')).toThrow(/more than 64 levels/);
  });

  test('of channels counts the rows of those beyond it, and reads none of them', () => {
    const channels = Array.from({ length: limits.MAX_SERIES + 40 }, (_, i) => `c${i}`);
    const long = climb((celsius) => [celsius]).flatMap(([time, celsius]) =>
      channels.map((name, i) => `${time},${name},${Number(celsius) + i / 10}`),
    );
    const log = readLog(utf8(['time,channel,value', ...long, ''].join('\n')), 'x');
    expect(log.source.rowsKept).toBe(rows.length);
    expect(log.zones.length).toBeLessThanOrEqual(limits.MAX_ZONES);
    const named = log.source.channels.map(({ name }) => name);
    expect(named).toContain('c255');
    expect(named).not.toContain('c256');
  });

  test('of names cuts them', () => {
    const text = [
      'Time,Temp °C,' + 'x'.repeat(500),
      ...rows.map((row) => `${row.join(',')},7`),
      '',
    ];
    const { channels } = readLog(utf8(text.join('\n')), 'x').source;
    expect(channels.map(({ name }) => name.length)).toContain(limits.MAX_NAME_CHARS);
  });

  test('is a number above what logs need', () => {
    for (const limit of Object.values(limits)) expect(limit).toBeGreaterThan(1);
  });
});
