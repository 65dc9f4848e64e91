import { describe, expect, test } from 'vitest';
import {
  headerCells,
  placeGivenHeader,
  placeTable,
  unitsLine,
} from '../../../../core/log/delimited/header.ts';
import { surveyOf } from '../helpers.ts';

const rows = Array.from({ length: 12 }, (_, i) => `2024-03-14 06:${10 + i}:00;${20 + i},5;7`);
const place = (above: string[], below: string[] = rows) => {
  const lines = [...above, ...below];
  const survey = surveyOf(lines.join('\n'))!;
  return { ...placeTable(survey, lines.length)!, survey };
};

describe('the header', () => {
  test('is the lines of names right above the first row', () => {
    expect(place(['Kiln log', 'Unit;C', '', 'Time;Temp;Step'])).toMatchObject({
      header: [3],
      firstRow: 4,
      tables: 1,
    });
    expect(place([])).toMatchObject({ header: [], firstRow: 0 });
  });

  test('may be of several lines, the last of them units', () => {
    const found = place(['Logger;Channel 1;Channel 2', 'Time;Kiln;Step', ';°C;-']);
    expect(found.header).toEqual([0, 1, 2]);
    expect(unitsLine(found.header, found.survey)).toBe(2);
  });

  test('may stand above blank lines, tags and spoilt rows', () => {
    expect(place(['Time;Temp;Step', ';;', '[data];;', 'x;-;-']).header).toEqual([0]);
  });

  test('may be a comment, and then is one line', () => {
    expect(place(['#Kiln;of;clay', '', '#Time;Temp;Step']).header).toEqual([2]);
  });

  test('may name places by numbers', () => {
    expect(place(['Time;1;2']).header).toEqual([0]);
  });

  test('is the one with the most rows of several, and of equals the first', () => {
    const small = ['Time;X;Y', ...rows.slice(0, 3), ''];
    expect(place([...small, 'Time;Temp;Step'])).toMatchObject({
      header: [5],
      firstRow: 6,
      tables: 2,
    });
    expect(place(['Time;Temp;Step'], [...rows, '', 'Time;Temp;Other', ...rows])).toMatchObject({
      header: [0],
    });
  });

  test('is not the names of outer records', () => {
    const nested = rows.map((row) => `;;${row}`);
    expect(place(['Cycle;A', ';Step;B', ';;Time;Temp;No'], nested)).toMatchObject({ header: [2] });
  });
});

test('a header that the person gives', () => {
  const survey = surveyOf(['Time;a;b', ';°C;-', 'Time;Temp;Step', ...rows].join('\n'))!;
  expect(placeGivenHeader(survey, 2, 15)).toEqual({ header: [2], firstRow: 3, tables: 1 });
  expect(placeGivenHeader(survey, null, 15)).toEqual({ header: [], firstRow: 3, tables: 1 });
  expect(placeGivenHeader(survey, 14, 15)).toBeNull();
});

test('names without the sign of a comment', () => {
  expect(headerCells({ cells: ['##Temp', 'Time'], classes: [], leading: 0 })).toEqual([
    'Temp',
    'Time',
  ]);
  expect(headerCells({ cells: ['#', 'Time'], classes: [], leading: 0 })).toEqual(['', 'Time']);
});
