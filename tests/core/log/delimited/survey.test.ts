import { describe, expect, test } from 'vitest';
import { BLANKS, plainDialect } from '../../../../core/log/delimited/split.ts';
import { fitsKinds, lookAt, surveyLines } from '../../../../core/log/delimited/survey.ts';

const rows = Array.from({ length: 20 }, (_, i) => `2024-03-14 06:${10 + i}:00;${20 + i},5;7`);
const survey = (lines: string[], delimiter: string) =>
  surveyLines(lines, plainDialect(delimiter), null);

describe('a dialect', () => {
  test('sees the rows of one shape and the kinds of their columns', () => {
    const seen = survey(['Kiln log', '', 'Time;Temp;Step', ...rows, 'End'], ';');
    expect(seen.rows).toEqual([...rows.keys()].map((row) => row + 3));
    expect(seen.kinds).toEqual(['stamp', 'number', 'number']);
    expect([seen.width, seen.leading, seen.decimal.mark]).toEqual([3, 0, ',']);
  });

  test('scores the better the more lines are rows of typed cells', () => {
    const scores = [';', ',', BLANKS].map((delimiter) => survey(rows, delimiter).score);
    expect(scores[0]).toBeGreaterThan(2 * Math.max(scores[1]!, scores[2]!));
  });

  test('takes lines that begin with a word for rows only if hardly any others could be', () => {
    const labelled = Array.from({ length: 12 }, (_, i) => `Top;${i * 60};${20 + i}`);
    expect(survey(labelled, ';').rows).toHaveLength(12);
    const settings = Array.from({ length: 12 }, () => 'Samples;1;1');
    expect(survey([...rows, ...settings], ';').rows).toHaveLength(20);
  });

  test('keeps records of another depth apart', () => {
    const nested = rows.flatMap((row, i) => [`;;${row}`, ...(i % 5 === 0 ? ['1;2;3;4'] : [])]);
    const seen = survey(nested, ';');
    expect([seen.leading, seen.rows.length]).toEqual([2, 20]);
  });
});

test('a line fits if its cells are of the kinds of the columns', () => {
  const { kinds } = survey(rows, ';');
  const fits = (line: string) =>
    fitsKinds(lookAt(line, plainDialect(';'), ','), { kinds, leading: 0 });
  expect(fits('2024-03-14 09:00:00;OPEN;7')).toBe(true);
  expect(fits('2024-03-14 09:00:00;;')).toBe(true);
  expect(fits('Min;20,5;words')).toBe(false);
  expect(fits(';;')).toBe(false);
});
