import { expect, test } from 'vitest';
import {
  areBracketed,
  insideBracket,
  namesInStatement,
} from '../../../../core/log/delimited/brackets.ts';

test.each([
  ["('2024-03-14 06:30', 20.5),", "'2024-03-14 06:30', 20.5"],
  ['[1, 20.5]', '1, 20.5'],
  ['  {1, 2};', '1, 2'],
  ["INSERT INTO log VALUES (1, '06:30', 20.5);", "1, '06:30', 20.5"],
  ["insert into `log` (`t`,`c`) values ('06:30',20.5)", "'06:30',20.5"],
])('%s', (line, inside) => {
  expect(insideBracket(line)).toBe(inside);
});

test.each(['2024-03-14,20.5', '[06:30] kiln 20.5', '(1, 2]', 'INSERT INTO log', '', '('])(
  '%j is no bracket',
  (line) => {
    expect(insideBracket(line)).toBeNull();
  },
);

test('most lines must be in brackets', () => {
  expect(areBracketed(['(1,2)', '(2,3)', '(3,4)', '(4,5)', 'done'])).toBe(true);
  expect(areBracketed(['(1,2)', '2,3'])).toBe(false);
  expect(areBracketed(['[a]', '[b]'])).toBe(false);
});

test('a statement may list the columns', () => {
  const statement = 'INSERT INTO log (`time`, "temp", [set]) VALUES (\'06:30\', 20.5, 21);';
  expect(namesInStatement(statement)).toEqual(['time', 'temp', 'set']);
  expect(namesInStatement("INSERT INTO log VALUES ('06:30', 20.5)")).toBeNull();
});
