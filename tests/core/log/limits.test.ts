import { describe, expect, test } from 'vitest';
import * as limits from '../../../core/log/limits.ts';
import { readLog } from '../../../core/log/read-log.ts';
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

  test('is a number above what logs need', () => {
    for (const limit of Object.values(limits)) expect(limit).toBeGreaterThan(1);
  });
});
