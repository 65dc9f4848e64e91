import { expect, test } from 'vitest';
import { lineText, sampleLines } from '../../../../core/log/delimited/sample-lines.ts';
import { HEAD_LINES, SAMPLE_BLOCK_LINES, SAMPLE_BLOCKS } from '../../../../core/log/limits.ts';
import { textOf } from '../helpers.ts';

test('a short file is all head', () => {
  const { head, body } = sampleLines(textOf('a\r\nb\n\nc'));
  expect(head.map(({ text }) => text)).toEqual(['a', 'b', '', 'c']);
  expect(head.map(({ line }) => line)).toEqual([1, 2, 3, 4]);
  expect(head.map(({ from }) => from)).toEqual([0, 3, 5, 6]);
  expect(body).toEqual([]);
});

test('a long file gives its head, and whole lines from all over the rest, the last with it', () => {
  const lines = Array.from({ length: 20_000 }, (_, i) => `line ${i}`);
  const { head, body } = sampleLines(textOf(`${lines.join('\n')}\n`));
  expect(head).toHaveLength(HEAD_LINES);
  expect(body).toHaveLength(SAMPLE_BLOCKS * SAMPLE_BLOCK_LINES);
  const numbers = body.map(({ text }) => Number(/^line (\d+)$/.exec(text)?.[1]));
  expect(numbers.every((number, i) => i === 0 || number > numbers[i - 1]!)).toBe(true);
  expect(numbers.at(-1)).toBe(19_999);
});

test('names that run over several lines in quotes are one line of the head', () => {
  const { head } = sampleLines(textOf('Time,"Kiln\ntemp",Set\n1,2,3\n'));
  expect(head.map(({ text, line }) => [line, text])).toEqual([
    [1, 'Time,"Kiln\ntemp",Set'],
    [3, '1,2,3'],
  ]);
});

test('a stray quote swallows nothing', () => {
  const { head } = sampleLines(textOf('a,"b\n1,2\n3,4\n5,6\n7,8\n9,10\n11,12\n13,14\n'));
  expect(head).toHaveLength(8);
});

test('NULs are taken out of a line', () => {
  expect(lineText(textOf('\0\0a\0b'), 0, 5)).toBe('ab');
});
