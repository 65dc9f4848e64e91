import { describe, expect, test } from 'vitest';
import { readLog } from '../../../../core/log/read-log.ts';
import { utf8 } from '../helpers.ts';

const two = (value: number): string => String(value).padStart(2, '0');
/** 9000 lines of 3 April, and between two sampled stretches a few of 13 April. */
const lines = (late: number): string[] =>
  Array.from({ length: 9000 }, (_, i) => {
    const day = i >= 2100 && i < 2100 + late ? '13' : '03';
    return `04/${day}/2024 ${two(Math.floor(i / 3600))}:${two(Math.floor(i / 60) % 60)}:${two(i % 60)},${(20 + i / 9).toFixed(1)}`;
  });
const read = (late: number, decisions = {}) =>
  readLog(utf8(['Time,Kiln °C', ...lines(late), ''].join('\n')), 'x', decisions);

describe('a part beyond 12 that no sampled line shows', () => {
  test('settles the order of the whole column', () => {
    const log = read(5);
    expect([log.source.rowsKept, log.startInstant]).toEqual([9000, '2024-04-03T00:00:00']);
    expect(log.source.decisions.find(({ what }) => what === 'day-order')).toMatchObject({
      ...{ choice: 'month-first', why: 'part-over-twelve' },
    });
    expect(log.source.time.assumptions).toEqual([]);
    expect(log.source.warnings).not.toContain('day-order-assumed');
  });

  test('is rejected if the person gave the order', () => {
    expect(read(5, { dayOrder: 'day-first' }).source.rowsRejected).toBe(5);
  });

  test('leaves an assumption where there is none', () => {
    expect(read(0).source.time.assumptions).toEqual(['day-first']);
  });
});
