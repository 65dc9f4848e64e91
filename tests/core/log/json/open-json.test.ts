import { describe, expect, test } from 'vitest';
import { openJson } from '../../../../core/log/json/open-json.ts';

const record = (i: number): string => `{"t":${i},"c":${20 + i}}`;
const records = [0, 1, 2, 3].map(record);

describe('a whole JSON file', () => {
  test('is a table whose rows know their lines and their text', () => {
    const opened = openJson(`[\n${records.join(',\n')}\n]`)!;
    expect([opened.format, opened.table.rows.length, opened.isCut]).toEqual(['json', 4, false]);
    expect(opened.lineOf(opened.table.rows.at(2).from)).toBe(4);
    expect(opened.textOf(opened.table.rows.at(2))).toBe(records[2]);
  });

  test('keeps what is whole where it was cut', () => {
    const opened = openJson(`[${records.join(',').slice(0, -3)}`)!;
    expect([opened.isCut, [...opened.damaged]]).toEqual([true, [3]]);
    expect([...openJson(`[${records.join(',')}`)!.damaged]).toEqual([]);
  });

  test('may be values one after the other', () => {
    const pretty = records.map((text) => JSON.stringify(JSON.parse(text), null, 2)).join('\n');
    expect(openJson(pretty)).toMatchObject({ format: 'json', isCut: false });
    expect(openJson(pretty)!.table.rows.length).toBe(4);
  });

  test('may hold no readings, which is refused', () => {
    expect(() => openJson('{"a":1}')).toThrow(expect.objectContaining({ code: 'not-readable' }));
  });
});

describe('JSON lines', () => {
  test('are a table too', () => {
    const opened = openJson(`${records.join('\n')}\n`)!;
    expect([opened.format, opened.table.rows.length]).toEqual(['json-lines', 4]);
    expect(opened.lineOf(opened.table.rows.at(3).from)).toBe(4);
  });

  test('may be damaged one by one', () => {
    const opened = openJson([records[0], records[1], '{"t":2,"c', records[3]].join('\n'))!;
    expect([[...opened.damaged], opened.isCut]).toEqual([[2], false]);
    expect(opened.textOf(opened.table.rows.at(2))).toBe('{"t":2,"c');
    expect(openJson([records[0], records[1], '{"t":2,"c'].join('\n'))!.isCut).toBe(true);
  });

  test('may be rows without names', () => {
    expect(openJson('[0,20]\n[1,21]\n[2,22]')!.table.rows.length).toBe(3);
  });
});

test('text that only begins like JSON is none', () => {
  for (const text of [
    '[#I]Device,,\n1,2\n',
    '[2024-03-14 06:30:00] INFO: 20.5 C\n',
    '{curly} words',
    '[data]\n1,20',
  ]) {
    expect(openJson(text)).toBeNull();
  }
});
