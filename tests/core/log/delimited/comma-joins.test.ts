import { describe, expect, test } from 'vitest';
import { joinCommas } from '../../../../core/log/delimited/comma-joins.ts';
import { plainDialect } from '../../../../core/log/delimited/split.ts';
import { surveyLines } from '../../../../core/log/delimited/survey.ts';

const joins = (lines: string[]) =>
  joinCommas(surveyLines(lines, plainDialect(','), null))?.joins ?? null;
const rows = (cells: (row: number) => string): string[] =>
  Array.from({ length: 20 }, (_, row) => `2024-03-14 06:${10 + row}:00,${cells(row)}`);

describe('numbers torn apart by their decimal comma', () => {
  test('are seen by names that are too few', () => {
    expect(joins(['Zeit,Temp', ...rows((i) => `${20 + i},${i % 3}`)])).toEqual({
      cells: 3,
      firsts: [1],
    });
    expect(joins(['Zeit,Ist,Soll', ...rows((i) => `${20 + i},5,${21 + i},0`)])).toEqual({
      cells: 5,
      firsts: [1, 3],
    });
    expect(joins(['Zeit,Ist,Leistung', ...rows((i) => `${20 + i},${(i * 7) % 10},${i}`)])).toEqual({
      cells: 4,
      firsts: [1],
    });
  });

  test('are seen without names by digits such as decimals have', () => {
    expect(joins(rows((i) => `${20 + i},${(i * 7) % 10}`))).toEqual({ cells: 3, firsts: [1] });
    expect(joins(rows((i) => `${20 + i},0${i % 10}`))).toEqual({ cells: 3, firsts: [1] });
  });

  test('are not seen in whole numbers that stand for themselves', () => {
    expect(
      joins(['Time,Temp,Step', ...rows((i) => `${20 + i},${1 + Math.floor(i / 7)}`)]),
    ).toBeNull();
    expect(joins(rows((i) => `${20 + i},${1 + Math.floor(i / 7)}`))).toBeNull();
    expect(joins(['Time,Temp', ...rows((i) => `${20 + i}.5,7`)])).toBeNull();
  });
});
